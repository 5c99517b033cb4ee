import { extname } from 'node:path';
import { cliWords } from '../words/en/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { readArguments } from './readArguments.ts';
import { readCard } from './readCard.ts';

/**
 * `foilproof plan CARD.json --print FILE.pdf`: the plan 1:1, with cut list, templates and steps.
 * @throws FoilproofError when the card has no plan or the file cannot be written
 */
export async function planCommand(args: string[]): Promise<number> {
  const { files, values } = readArguments('plan', args, { values: ['print'], flags: [] });
  if (files.length !== 1) throw new FoilproofError(cliWords.noCard('plan'));
  const print = values.get('print');
  if (!print || extname(print).toLowerCase() !== '.pdf') throw new FoilproofError(cliWords.noPrint);
  const card = await readCard(files[0]);
  if (!card.plan || card.plan.strips.length === 0) throw new FoilproofError(cliWords.noPlan(files[0]));
  throw new FoilproofError(cliWords.noPrint);
}
