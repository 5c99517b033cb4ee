import { middleOf } from '../../geometry/index.ts';
import type { Window } from './window.ts';

/** Paper beside a strip: medians, and the spread of its L*. */
export interface Paper {
  L: number;
  a: number;
  b: number;
  spread: number;
}

/** Paper that is drawn on or shaded is not believed to spread by more, L*. */
const mostSpread = 12;

/** Paper beside the strip about a row of the window, on its left (0) or right (1) side. */
export type Mouths = (row: number, side: 0 | 1) => Paper | undefined;
/** Rows that share what lies beside them, rows to both sides that are looked at, in steps, and samples at least. */
const mouthStep = 6;
const mouthReach = 12;
const mouthEvery = 3;
const leastMouth = 12;

/** Each place is looked at once, when it is first asked for. */
export function mouthsOf(window: Window): Mouths {
  const { rows, columns, from, to } = window;
  const sides = [
    Array.from({ length: from }, (_, n) => from - 1 - n),
    Array.from({ length: columns.length - to }, (_, n) => to + n),
  ];
  const known = new Map<number, Paper | undefined>();
  return (row, side) => {
    const step = Math.max(0, Math.min(Math.floor((rows - 1) / mouthStep), Math.round(row / mouthStep)));
    const key = 2 * step + side;
    if (!known.has(key)) known.set(key, paperAt(window, step * mouthStep, sides[side]));
    return known.get(key);
  };
}

const picked = [0, 1, 2].map(() => new Float32Array(128));

/** Medians of what lies beside the strip about a row, up to the next copper. @param side columns, the nearest first */
function paperAt(
  { L, a, b, copper, columns, rows }: Window,
  row: number,
  side: readonly number[],
): Paper | undefined {
  let n = 0;
  for (let r = Math.max(0, row - mouthReach); r <= Math.min(rows - 1, row + mouthReach); r += mouthEvery) {
    for (const t of side) {
      const k = r * columns.length + t;
      if (copper[k]) break;
      [picked[0][n], picked[1][n], picked[2][n]] = [L[k], a[k], b[k]];
      n++;
    }
  }
  if (n < leastMouth) return undefined;
  const [Ls, as, bs] = picked.map((values) => values.subarray(0, n));
  const paper = { L: middleOf(Ls), a: middleOf(as), b: middleOf(bs), spread: 0 };
  for (let k = 0; k < n; k++) Ls[k] = Math.abs(Ls[k] - paper.L);
  paper.spread = Math.min(mostSpread, 1.48 * middleOf(Ls));
  return paper;
}
