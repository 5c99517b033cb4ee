import { middleOf } from '../../geometry/index.ts';
import type { Mouths, Paper } from './mouths.ts';
import { rowOf, type Window } from './window.ts';

/** What paper should look like along a slanted line across a strip, column by column of the strip. */
export interface Line {
  row: number;
  /** Rows per tenth of a millimetre across. */
  slope: number;
  /** L* + 16, a*, b* of the paper, which shade scales alike. */
  L: Float32Array;
  a: Float32Array;
  b: Float32Array;
  /** Share of its light that is left, as a cube root. */
  light: Float32Array;
  spread: number;
  /** The median light before it is evened: over 1 it is lighter than paper. */
  middle: number;
  /** Share of the columns that are so much lighter than paper that they shine. */
  shine: number;
  /** The paper at its two ends. */
  ends: [Paper | undefined, Paper | undefined];
}

/** Spreads, at least, of paper's L* where it is lighter and where it is darker (tape throws a shade), and of its a* and b*. */
export const lighter = 3;
const darker = 4.5;
export const chroma = 3;
/** A cut keeps between these shares of the paper's light; what is lighter than paper is a glint. */
const leastLight = 0.55;
const mostLight = 1.03;
const shines = 1.06;
/** What lies outside of these, by half of its columns, needs no closer look: light, and a* and b* together. */
const lightest = 1.15;
const mostTint = 14;
/** Columns at most. */
const most = 64;

const [L, a, b, light, lights] = [0, 1, 2, 3, 4].map(() => new Float32Array(most));
const line: Line = {
  row: 0,
  slope: 0,
  L,
  a,
  b,
  light,
  spread: 0,
  middle: 1,
  shine: 0,
  ends: [undefined, undefined],
};

/** The line through a row; undefined where too little on it may be paper. One is kept: it holds until the next is asked for. */
export function lineAt(window: Window, mouths: Mouths, row: number, slope: number): Line | undefined {
  const { columns, from, to } = window;
  const ends: Line['ends'] = [
    mouths(rowOf(window, row, slope, from), 0),
    mouths(rowOf(window, row, slope, to - 1), 1),
  ];
  const [left, right] = [ends[0] ?? ends[1], ends[1] ?? ends[0]];
  if (!left || !right) return undefined;
  const count = to - from;
  let unlike = 0;
  for (let n = 0; n < count; n++) {
    const u = n / (count - 1);
    L[n] = left.L + u * (right.L - left.L) + 16;
    a[n] = left.a + u * (right.a - left.a);
    b[n] = left.b + u * (right.b - left.b);
    const k = rowOf(window, row, slope, from + n) * columns.length + from + n;
    light[n] = (window.L[k] + 16) / L[n];
    const tint = Math.abs(window.a[k] - light[n] * a[n]) + Math.abs(window.b[k] - light[n] * b[n]);
    if ((light[n] < leastLight || light[n] > lightest || tint > mostTint) && ++unlike > count / 2)
      return undefined;
  }
  line.row = row;
  line.slope = slope;
  line.spread = Math.max(left.spread, right.spread);
  line.ends = ends;
  evenLight(count);
  return line;
}

/** Light changes evenly across a cut: a line through the medians of its two parts. */
function evenLight(count: number): void {
  lights.set(light.subarray(0, count));
  line.middle = middleOf(lights.subarray(0, count));
  let shining = 0;
  for (let n = 0; n < count; n++) if (light[n] > shines) shining++;
  line.shine = shining / count;
  const bounded = (value: number): number => Math.max(leastLight, Math.min(mostLight, value));
  const part = Math.ceil(0.6 * count);
  lights.set(light.subarray(0, part));
  const low = bounded(middleOf(lights.subarray(0, part)));
  lights.set(light.subarray(count - part, count));
  const high = bounded(middleOf(lights.subarray(0, part)));
  for (let n = 0; n < count; n++) {
    const u = Math.max(-0.3, Math.min(1.3, (n / (count - 1) - 0.25) / 0.5));
    light[n] = low + u * (high - low);
  }
}

/** Squared distance of a sample from the paper expected in the strip's n-th column, in spreads. */
export function off(window: Window, k: number, n: number, { L, a, b, light, spread }: Line): number {
  const dL = window.L[k] + 16 - light[n] * L[n];
  const [da, db] = [window.a[k] - light[n] * a[n], window.b[k] - light[n] * b[n]];
  const usual = dL > 0 ? lighter : Math.max(darker, spread);
  return (dL * dL) / (usual * usual) + (da * da + db * db) / (chroma * chroma);
}
