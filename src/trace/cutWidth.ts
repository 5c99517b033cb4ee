import type { Surroundings } from './contrast.ts';
import { median } from './polyline.ts';
import type { Ribbon } from './ribbon.ts';

/** Rows next to a cut that its blur reaches, and rows beyond them that show the copper by itself. */
const soft = 4;
const solid = 5;

/**
 * Width of a cut along the strip, in rows, to a fraction of one: at each column the share of paper in each row is added
 * up over the cut and its blurred borders; the median over the columns counts.
 * @param rows row of the cut at each column of the strip
 */
export function cutWidth(
  strip: {
    ribbon: Ribbon;
    first: number;
    columns: number;
    evidence: Float32Array;
    around: (s: number) => Surroundings | undefined;
  },
  rows: Int32Array,
): number {
  const { ribbon, first, columns, evidence, around } = strip;
  const widths: number[] = [];
  for (let t = 0; t < columns; t++) {
    let from = rows[t];
    let to = rows[t];
    while (from > 0 && evidence[(from - 1) * columns + t] > 0) from--;
    while (to < ribbon.length - 1 && evidence[(to + 1) * columns + t] > 0) to++;
    const view = around(rows[t]);
    const paper = view?.left ?? view?.right;
    const width = paper && integrate(ribbon, first + t, from, to, paper.mean, paper.spread);
    if (width !== undefined) widths.push(width);
  }
  return median(widths);
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
