import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';

export interface NearPiece {
  piece: number;
  mm: number;
  at: Point;
}

/**
 * Pieces within reach of a place, nearest first.
 *
 * @param reachMm radius of the search
 * @param accept leaves out places, e.g. those on the other pad's side
 */
export function nearPieces(
  traced: Traced,
  at: Point,
  reachMm: number,
  accept?: (place: Point) => boolean,
): NearPiece[] {
  const { width, height, pxPerMm, originMm, labels } = traced;
  const cx = (at[0] - originMm[0]) * pxPerMm - 0.5;
  const cy = (at[1] - originMm[1]) * pxPerMm - 0.5;
  const reach = reachMm * pxPerMm;
  const best = new Map<number, { d2: number; x: number; y: number }>();
  const y1 = Math.min(height - 1, Math.floor(cy + reach));
  for (let y = Math.max(0, Math.ceil(cy - reach)); y <= y1; y++) {
    const dy = y - cy;
    const half = Math.sqrt(Math.max(0, reach * reach - dy * dy));
    const x1 = Math.min(width - 1, Math.floor(cx + half));
    for (let x = Math.max(0, Math.ceil(cx - half)), k = y * width + x; x <= x1; x++, k++) {
      const piece = labels[k];
      if (piece === 0) continue;
      const d2 = (x - cx) ** 2 + dy * dy;
      const held = best.get(piece);
      if (held && d2 >= held.d2) continue;
      if (accept && !accept(placeOf(traced, x, y))) continue;
      best.set(piece, { d2, x, y });
    }
  }
  return [...best]
    .map(([piece, { d2, x, y }]) => ({ piece, mm: Math.sqrt(d2) / pxPerMm, at: placeOf(traced, x, y) }))
    .sort((a, b) => a.mm - b.mm);
}

function placeOf({ originMm, pxPerMm }: Traced, x: number, y: number): Point {
  return [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm];
}

/** Piece at a place, 0 = none. */
export function pieceAt(traced: Traced, [x, y]: Point): number {
  const i = Math.floor((x - traced.originMm[0]) * traced.pxPerMm);
  const j = Math.floor((y - traced.originMm[1]) * traced.pxPerMm);
  if (i < 0 || j < 0 || i >= traced.width || j >= traced.height) return 0;
  return traced.labels[j * traced.width + i];
}
