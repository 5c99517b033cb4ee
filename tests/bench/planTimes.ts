import { compareMasks } from '../../src/plan/compare/compareMasks.ts';
import { suggestRoute } from '../../src/plan/index.ts';
import { drawPair } from '../plan/compare/drawPair.ts';
import { randomCard } from '../plan/route/randomCard.ts';

export interface Spread {
  median: number;
  p95: number;
  most: number;
}

/** Milliseconds of a processor that route suggestions take over 200 seeded cards (bar: 1 s each). */
export function routeTimes(): Spread {
  return spread(
    Array.from({ length: 200 }, (_, k) => {
      const card = randomCard(k + 1);
      return processorMs(() => suggestRoute(card));
    }),
  );
}

/** Milliseconds of a processor that comparing two drawn masks takes (bar: 150 ms for 640 x 640). */
export function compareTimes(): Spread {
  return spread(
    Array.from({ length: 20 }, (_, k) => {
      const { built, plan } = drawPair(k + 1, ['open', 'short', 'spur']);
      return processorMs(() => compareMasks(built, plan));
    }),
  );
}

function processorMs(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function spread(times: number[]): Spread {
  const sorted = times.sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return { median: at(0.5), p95: at(0.95), most: at(1) };
}
