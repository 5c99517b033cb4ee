import { candidatesOf, proposalsOf } from './gather.ts';
import type { View } from './gather.ts';
import { conditionalLogit, logistic } from './logit.ts';
import { evenOf, scenes } from './views.ts';

/**
 * Makes the weights of `src/sheet/outline/rank.ts` and `certainty.ts` again, from made-up scenes and from the
 * even-numbered ones of a folder of path-traced photographs (100 to 135 of tests/generate/thirdLook):
 *   npx tsx tests/sheet/fit/fitOutline.ts rank FOLDER       prints the weights of the ranking: put them into rank.ts
 *   npx tsx tests/sheet/fit/fitOutline.ts certainty FOLDER  then prints those of the certainty, which rests on the ranking
 * Seeds 100001 on; nothing else draws them. Figures on scenes held back: tests/sheet/sceneRates.ts.
 */
const firstSeed = 100001;
const count = { rank: 360, certainty: 278 };
const [what, folder] = process.argv.slice(2);
/** So often a path-traced photograph counts: there are far fewer of them. */
const times = { rank: 2, certainty: 3 };
/** A wrong outline that is believed costs the maker more than a right one that is asked about. */
const costOfFalse = 9;

async function gathered<T>(of: (view: View) => Promise<T[]>, count: number, often: number): Promise<T[]> {
  const all: T[] = [];
  for await (const view of scenes(firstSeed, count)) all.push(...(await of(view)));
  if (!folder) return all;
  for await (const view of evenOf(folder)) {
    const rows = await of(view);
    for (let n = 0; n < often; n++) all.push(...rows);
  }
  return all;
}

const rounded = (weights: number[]) => weights.map((w) => Number(w.toFixed(3))).join(', ');

if (what === 'rank')
  console.log(rounded(conditionalLogit(await gathered(candidatesOf, count.rank, times.rank), 0.0005)));
else
  console.log(
    rounded(logistic(await gathered(proposalsOf, count.certainty, times.certainty), 0.0002, costOfFalse)),
  );
