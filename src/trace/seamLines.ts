import type { Ribbon } from './ribbon.ts';

/** Slopes, rows per column, at which a line across the strip is looked for. */
const slopes = [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1];
/** Steps in L* below this are texture. */
const least = 3;
/** Share of the columns that agree on a seam. */
const leastShare = 0.96;
/** Rows within which two lines are one. */
const apart = 15;

export interface SeamLine {
  /** Row of its middle. */
  row: number;
  /** Share of the columns at which the step has the line's own sign. */
  share: number;
  widthPx: number;
}

/**
 * Straight lines across a strip at which its lightness steps, or a thin line is drawn, all the way: the edge of a tape
 * laid over another, or a fold. Creases that end within the strip do not hold their sign over all columns.
 * @param first,columns the strip's columns in the ribbon
 */
export function seamLines(ribbon: Ribbon, first: number, columns: number): SeamLine[] {
  const { length, across, L } = ribbon;
  const step = new Float32Array(length * columns);
  const line = new Float32Array(length * columns);
  for (let s = 3; s < length - 3; s++) {
    for (let t = 0; t < columns; t++) {
      const n = s * across + first + t;
      const [up, down] = [L[n - 2 * across] + L[n - across], L[n + across] + L[n + 2 * across]];
      step[s * columns + t] = (down - up) / 2;
      line[s * columns + t] = L[n] - (L[n - 3 * across] + L[n + 3 * across]) / 2;
    }
  }
  const best: SeamLine[] = [];
  const skip = Math.max(1, Math.round(columns / 25));
  for (let s = 3; s < length - 3; s++) {
    let share = 0;
    for (const slope of slopes) {
      share = Math.max(share, agreement(step, s, slope, length, columns, skip));
      share = Math.max(share, agreement(line, s, slope, length, columns, skip));
    }
    if (share === 0) continue;
    const last = best[best.length - 1];
    if (!last || s - last.row > apart) best.push({ row: s, share, widthPx: 2 });
    else if (share > last.share) best[best.length - 1] = { row: s, share, widthPx: 2 };
  }
  return best;
}

/** Share of the columns on a slanted line that have one sign and more than texture's size; 0 where they are too few for a seam. */
function agreement(
  plane: Float32Array,
  s: number,
  slope: number,
  rows: number,
  columns: number,
  skip: number,
): number {
  let up = 0;
  let down = 0;
  const all = Math.ceil(columns / skip);
  const mostOff = (1 - leastShare) * all;
  for (let t = 0, n = 1; t < columns; t += skip, n++) {
    const row = Math.round(s + slope * (t - (columns - 1) / 2));
    if (row < 0 || row >= rows) return 0;
    const v = plane[row * columns + t];
    if (v > least) up++;
    else if (v < -least) down++;
    if (n - Math.max(up, down) > mostOff) return 0;
  }
  return Math.max(up, down) / all;
}
