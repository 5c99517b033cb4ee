import { candidatesOf, proposalsOf } from './gather.ts';
import { conditionalLogit, logistic } from './logit.ts';

/**
 * Makes the weights of `src/sheet/outline/rank.ts` and `certainty.ts` again from made-up scenes:
 *   npx tsx tests/sheet/fit/fitOutline.ts rank       prints the weights of the ranking: put them into rank.ts
 *   npx tsx tests/sheet/fit/fitOutline.ts certainty  then prints those of the certainty, which rests on the ranking
 * Seeds 100001 on; nothing else draws them. Figures on scenes held back: tests/sheet/sceneRates.ts.
 */
const firstSeed = 100001;
const count = Number(process.argv[3] ?? 360);
/** A wrong outline that is believed costs the maker more than a right one that is asked about. */
const costOfFalse = 6;

const gathered = async <T>(of: (seed: number) => Promise<T[]>): Promise<T[]> => {
  const all: T[] = [];
  for (let seed = firstSeed; seed < firstSeed + count; seed++) {
    all.push(...(await of(seed)));
    if (seed % 20 === 0) process.stderr.write(`${seed - firstSeed + 1} of ${count} scenes\n`);
  }
  return all;
};

const rounded = (weights: number[]) => weights.map((w) => Number(w.toFixed(3))).join(', ');

if (process.argv[2] === 'rank') console.log(rounded(conditionalLogit(await gathered(candidatesOf), 0.0005)));
else console.log(rounded(logistic(await gathered(proposalsOf), 0.001, costOfFalse)));
