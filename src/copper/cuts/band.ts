import { lineAt, off, type Line } from './line.ts';
import type { Mouths } from './mouths.ts';
import { rowOf, type Window } from './window.ts';

/** A straight band across a strip that looks like paper, as far as the picture shows one. */
export interface Band {
  /** Its middle on the strip's axis, rows of the window from its middle one, and the rows per px across that it slants. */
  row: number;
  slope: number;
  /** Half its width as far as it is paper for certain, rows. */
  half: number;
  /** How much more it looks like paper than what lies before and behind it, mean over the columns; -8 to 8. */
  score: number;
  /** Share of its columns that look like paper, and at which neither flank does. */
  paper: number;
  parted: number;
  /** The longest run of columns that do not look like paper, as a share of the width. */
  held: number;
  /** What is left of the paper's light, as a cube root. */
  shade: number;
  /** The same by its middle, without bounds: above 1 it is lighter than paper. */
  light: number;
  /** Share of its columns that are so much lighter than paper that they shine. */
  shine: number;
}

/** Slants, rows per px. */
const step = 0.08;
const slopes = Array.from({ length: 13 }, (_, n) => (n - 6) * step);
const coarseSlopes = slopes.filter((_, n) => n % 2 === 0);
export const steepest = slopes[slopes.length - 1];
/** Rows that must be paper, rows from the middle at which the flanks are looked at, half the width that is opened. */
const sizes = [
  { inner: [0], flank: 4, half: 1.5 },
  { inner: [-1, 1], flank: 6, half: 2 },
  { inner: [-3, 0, 3], flank: 8, half: 4 },
  { inner: [-5, -2, 2, 5], flank: 10, half: 6 },
];
const coarseSize = { inner: [0], flank: 6, half: 2 };
export const widestFlank = 10;
/** A cut's border is uneven by so many rows. */
export const uneven = [-1, 0, 1];
const even = [0];

/** Squared spreads up to which a colour counts as paper, from which on it surely is none, and at which a flank is none. */
const alike = 4.8;
export const unlike = 8;
const flankUnlike = 4.5;

/** The best band about a row; the coarse look is quick and asks for narrow ones only. */
export function bandAt(
  window: Window,
  mouths: Mouths,
  row: number,
  near?: { slope: number },
): Band | undefined {
  let best: Band | undefined;
  const tried = near ? slopes.filter((s) => Math.abs(s - near.slope) < 2.5 * step) : coarseSlopes;
  for (const slope of tried) {
    const line = lineAt(window, mouths, row, slope);
    if (!line) continue;
    for (const size of near ? sizes : [coarseSize]) {
      const band = judge(window, line, size, near ? uneven : even);
      if (!best || band.score > best.score) best = band;
    }
  }
  return best;
}

/** The best band along one line, its border as uneven as a cut's. */
export function bandAlong(window: Window, mouths: Mouths, row: number, slope: number): Band | undefined {
  const line = lineAt(window, mouths, row, slope);
  if (!line) return undefined;
  return sizes
    .map((size) => judge(window, line, size, uneven))
    .reduce((best, band) => (band.score > best.score ? band : best));
}

const bounded = (squared: number): number => Math.min(squared / 2, 4);

function judge(
  window: Window,
  line: Line,
  { inner, flank, half }: (typeof sizes)[number],
  shifts: readonly number[],
): Band {
  const { columns, from, to } = window;
  const { row, slope } = line;
  const width = columns.length;
  const count = to - from;
  let [score, paper, parted, run, held] = [0, 0, 0, 0, 0];
  for (let n = 0; n < count; n++) {
    const t = from + n;
    const r = rowOf(window, row, slope, t);
    let within = 4;
    let least = Infinity;
    for (const shift of shifts) {
      let [sum, bound] = [0, 0];
      for (const i of inner) {
        const squared = off(window, (r + i + shift) * width + t, n, line);
        sum += squared;
        bound += bounded(squared);
      }
      within = Math.min(within, bound / inner.length);
      least = Math.min(least, sum / inner.length);
    }
    const [before, behind] = [
      off(window, (r - flank) * width + t, n, line),
      off(window, (r + flank) * width + t, n, line),
    ];
    score += bounded(before) + bounded(behind) - 2 * within;
    if (least < alike) paper++;
    if (before > flankUnlike && behind > flankUnlike) parted++;
    run = least > unlike ? run + 1 : 0;
    held = Math.max(held, run);
  }
  const shade = (line.light[0] + line.light[count - 1]) / 2;
  return {
    row,
    slope,
    half,
    score: score / count,
    paper: paper / count,
    parted: parted / count,
    held: held / count,
    shade,
    light: line.middle,
    shine: line.shine,
  };
}
