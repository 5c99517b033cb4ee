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

/** What lies beside a strip at one place and differs so much, a* and b*, from the paper all along it is no paper: a wire that goes over. */
const mostTint = 14;

/** Each place is looked at once, when it is first asked for. */
export function mouthsOf(window: Window): Mouths {
  const along = ([0, 1] as const).map((side) => paperAbout(window, window.reach, side, window.reach));
  const last = Math.floor((window.rows - 1) / mouthStep);
  const known = new Map<number, Paper | undefined>();
  return (row, side) => {
    const step = Math.max(0, Math.min(last, Math.round(row / mouthStep)));
    const key = 2 * step + side;
    if (!known.has(key)) {
      const [here, all] = [paperAbout(window, step * mouthStep, side, mouthReach), along[side]];
      const strange = here && all && Math.hypot(here.a - all.a, here.b - all.b) > mostTint;
      known.set(key, strange ? all : here);
    }
    return known.get(key);
  };
}

/** Samples at most: of more only every so many rows are taken. */
const most = 128;
const picked = [0, 1, 2].map(() => new Float32Array(most));

/** Medians of what lies beside the strip within some rows of a row, up to the next copper. */
export function paperAbout(window: Window, row: number, side: 0 | 1, reach: number): Paper | undefined {
  const { L, a, b, copper, columns, from, to, rows } = window;
  const beside = side ? columns.length - to : from;
  const every = Math.max(mouthEvery, Math.ceil(((2 * reach + 1) * beside) / most));
  let n = 0;
  for (let r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r += every) {
    for (let step = 0; step < beside; step++) {
      const k = r * columns.length + (side ? to + step : from - 1 - step);
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
