import type { Surroundings } from './contrast.ts';
import { median } from './polyline.ts';
import type { Ribbon } from './ribbon.ts';

/** Rows next to a cut that its blur reaches, and rows beyond them that show the copper by itself. */
const soft = 4;
const solid = 5;

/** How a cut lies across the strip. */
export interface CutShape {
  /** Along the strip, in rows, to a fraction of one. */
  width: number;
  /** How far the middles of its rows lie off a straight line, median, in rows. A cut is straight, a facet's glint is not. */
  crooked: number;
  /** Median deviation of the width over the columns, as a share of it. */
  uneven: number;
  /** Share of the columns at which paper is seen and is no mere passage from a dark facet to a bright one. */
  sure: number;
  /** The longest run of columns, side by side, at which no paper is seen: what still holds the strip together. */
  held: number;
}

/**
 * At each column the share of paper in each row is added up over the cut and its blurred borders; the median over the
 * columns is the width.
 * @param rows row of the cut at each column of the strip
 * @param blurPx standard deviation of the picture's blur, px
 */
export function cutShape(
  strip: {
    ribbon: Ribbon;
    first: number;
    columns: number;
    evidence: Float32Array;
    around: (s: number) => Surroundings | undefined;
  },
  rows: Int32Array,
  blurPx: number,
): CutShape {
  const { ribbon, first, columns, evidence, around } = strip;
  const widths: number[] = [];
  const runs: number[] = [];
  const middles: number[] = [];
  let sure = 0;
  let held = 0;
  let unbroken = 0;
  for (let t = 0; t < columns; t++) {
    let from = rows[t];
    let to = rows[t];
    while (from > 0 && evidence[(from - 1) * columns + t] > 0) from--;
    while (to < ribbon.length - 1 && evidence[(to + 1) * columns + t] > 0) to++;
    runs.push(to - from + 1);
    middles.push((from + to) / 2);
    const view = around(rows[t]);
    const paper = view?.left ?? view?.right;
    const long = to - from + 1 > 1.5 + 2.5 * blurPx;
    const seen = evidence[rows[t] * columns + t] > 0;
    unbroken = evidence[rows[t] * columns + t] > -1 ? 0 : unbroken + 1;
    held = Math.max(held, unbroken);
    if (paper && seen && (long || !isPassage(ribbon, first + t, from, to, paper.mean[0]))) sure++;
    const width = paper && integrate(ribbon, first + t, from, to, paper.mean, paper.spread);
    if (width !== undefined) widths.push(width);
  }
  const run = median(runs);
  return {
    width: widths.length ? median(widths) : run,
    crooked: offLine(middles),
    uneven: median(runs.map((r) => Math.abs(r - run))) / run,
    sure: sure / columns,
    held,
  };
}

/**
 * Where a dark facet borders a bright one, blur runs through all lightnesses between, paper's too: darker than paper
 * before, lighter after, or the other way round.
 */
function isPassage(
  { L, across, length }: Ribbon,
  column: number,
  from: number,
  to: number,
  paper: number,
): boolean {
  const before = L[Math.max(0, from - 3) * across + column] - paper;
  const after = L[Math.min(length - 1, to + 3) * across + column] - paper;
  return before * after < 0 && Math.min(Math.abs(before), Math.abs(after)) > 4;
}

/** Median distance of a sequence from its least-squares line. */
function offLine(values: readonly number[]): number {
  const n = values.length;
  const middle = (n - 1) / 2;
  const mean = values.reduce((sum, v) => sum + v, 0) / n;
  let up = 0;
  let across = 0;
  values.forEach((v, t) => {
    up += (t - middle) * (v - mean);
    across += (t - middle) ** 2;
  });
  const slope = across ? up / across : 0;
  return median(values.map((v, t) => Math.abs(v - mean - slope * (t - middle))));
}

function integrate(
  ribbon: Ribbon,
  column: number,
  from: number,
  to: number,
  paper: readonly number[],
  spread: readonly number[],
): number | undefined {
  const planes = [ribbon.L, ribbon.a, ribbon.b];
  const meanOf = (low: number, high: number): number[] | undefined => {
    const a = Math.max(0, low);
    const b = Math.min(ribbon.length - 1, high);
    if (b < a) return undefined;
    return planes.map((plane) => {
      let sum = 0;
      for (let s = a; s <= b; s++) sum += plane[s * ribbon.across + column];
      return sum / (b - a + 1);
    });
  };
  const before = meanOf(from - soft - solid, from - soft - 1) ?? meanOf(to + soft + 1, to + soft + solid);
  const after = meanOf(to + soft + 1, to + soft + solid) ?? before;
  if (!before || !after) return undefined;
  let sum = 0;
  for (let s = Math.max(0, from - soft); s <= Math.min(ribbon.length - 1, to + soft); s++) {
    const copper = 2 * s < from + to ? before : after;
    let dot = 0;
    let norm = 0;
    for (let c = 0; c < 3; c++) {
      const way = (paper[c] - copper[c]) / spread[c];
      dot += (way * (planes[c][s * ribbon.across + column] - copper[c])) / spread[c];
      norm += way * way;
    }
    sum += norm > 9 ? Math.max(0, Math.min(1, dot / norm)) : s >= from && s <= to ? 1 : 0;
  }
  return sum;
}
