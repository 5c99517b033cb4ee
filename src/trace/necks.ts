import { median } from './polyline.ts';
import type { Neck, Piece } from './types.ts';

/** Points (half a millimetre each) on both sides of a place that tell the usual width there. */
const reach = 24;

/**
 * Narrow places of a piece: where the copper across a centre-line falls under 0.6 of its usual width nearby, and runs
 * that are thin throughout between two wide ones (a sliver that joins two strips).
 */
export function necksOf(piece: Piece): Neck[] {
  const found: Neck[] = [];
  for (const { path, widths } of piece.lines) {
    if (median(widths) < 0.5 * piece.widthMm) {
      const at = narrowest(widths, 0, widths.length);
      found.push({ piece: piece.id, at: path[at], widthMm: widths[at], usualMm: piece.widthMm });
      continue;
    }
    const most = Math.max(...widths);
    for (let k = 0; k < widths.length; k++) {
      if (widths[k] >= 0.6 * most) continue;
      const usual = median(widths.slice(Math.max(0, k - reach), k + reach + 1));
      if (widths[k] >= 0.6 * usual) continue;
      let to = k;
      while (to < widths.length && widths[to] < 0.6 * usual) to++;
      const at = narrowest(widths, k, to);
      found.push({ piece: piece.id, at: path[at], widthMm: widths[at], usualMm: usual });
      k = to;
    }
  }
  return found;
}

/** The narrowest point; of those alike, the one nearest the middle of the stretch. */
function narrowest(widths: readonly number[], from: number, to: number): number {
  const least = Math.min(...widths.slice(from, to)) + 0.05;
  const middle = (from + to - 1) / 2;
  let at = -1;
  for (let k = from; k < to; k++) {
    if (widths[k] <= least && (at < 0 || Math.abs(k - middle) < Math.abs(at - middle))) at = k;
  }
  return at;
}
