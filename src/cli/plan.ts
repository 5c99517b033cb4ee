import { writeFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { printPlan } from '../plan/index.ts';
import { fontsInNode } from '../record/pdf/fontsInNode.ts';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { paperOf } from './paperOf.ts';
import { readArguments } from './readArguments.ts';
import { readCard } from './readCard.ts';

/**
 * `foilproof plan CARD.json --print FILE.pdf`: the plan 1:1, with cut list, templates and steps.
 * @throws FoilproofError when the card has no plan or the file cannot be written
 */
export async function planCommand(args: string[]): Promise<number> {
  const { files, values } = readArguments('plan', args, { values: ['print', 'paper'], flags: [] });
  if (files.length !== 1) throw new FoilproofError(cliWords.noCard('plan'));
  const print = values.get('print');
  if (!print || extname(print).toLowerCase() !== '.pdf') throw new FoilproofError(cliWords.noPrint);
  const paper = paperOf(values.get('paper'));
  const card = await readCard(files[0]);
  if (!card.plan || card.plan.strips.length === 0) throw new FoilproofError(cliWords.noPlan(files[0]));
  const pdf = await printPlan(card, { paper, fonts: await fontsInNode(), made: new Date() });
  await writeFile(print, pdf).catch(() => {
    throw new FoilproofError(cliWords.cannotWrite(print));
  });
  return 0;
}
