import { asPlanned } from '../check/index.ts';
import { sayPower } from '../power/index.ts';
import type { PowerReport } from '../power/index.ts';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { decimal } from '../words/numbers.ts';
import { powerStripWords } from '../words/powerStrip.ts';
import { sayState } from '../words/states.ts';
import { readArguments } from './readArguments.ts';
import { readCard } from './readCard.ts';

/**
 * `foilproof power CARD.json`: what lights, how brightly, for how long, from the card's own plan.
 * @returns 0 when every lamp lights in some state and the cell is never shorted, else 1
 * @throws FoilproofError when the card cannot be read
 */
export async function powerCommand(
  args: string[],
  print: (line: string) => void = console.log,
): Promise<number> {
  const { files, flags } = readArguments('power', args, { values: [], flags: ['json'] });
  if (files.length !== 1) throw new FoilproofError(cliWords.noCard('power'));
  const card = await readCard(files[0]);
  const { power, byPlan } = asPlanned(card);
  if (flags.has('json'))
    print(JSON.stringify({ card: files[0], by_plan: byPlan, ...power, says: sayPower(power) }));
  else for (const line of textOf(power, byPlan)) print(line);
  return isWell(
    power,
    card.lamps.map(({ id }) => id),
  )
    ? 0
    : 1;
}

function isWell({ states }: PowerReport, lamps: string[]): boolean {
  const lights = (id: string) => states.some((state) => state.lamps[id]?.lit);
  return lamps.every(lights) && states.every(({ load }) => load !== 'shorted');
}

function textOf(power: PowerReport, byPlan: boolean): string[] {
  const { tells, advice, joints, lesson } = sayPower(power);
  const rows = power.states.map(({ name, lamps }) => {
    const said = Object.entries(lamps).map(
      ([id, { mA, look }]) => `${id} ${powerStripWords.looks[look]} ${decimal(mA, 2)} mA`,
    );
    return `${sayState(name)}: ${said.join(', ') || '-'}`;
  });
  return [...(byPlan ? [] : [cliWords.noPlanPower]), ...rows, '', ...tells, ...advice, ...joints, ...lesson];
}
