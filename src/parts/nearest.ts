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
  accept: (place: Point) => boolean = () => true,
): NearPiece[] {
  const { width, height, pxPerMm, originMm, labels } = traced;
  const cx = (at[0] - originMm[0]) * pxPerMm;
  const cy = (at[1] - originMm[1]) * pxPerMm;
  const reach = reachMm * pxPerMm;
  const best = new Map<number, NearPiece>();
  const y1 = Math.min(height - 1, Math.floor(cy + reach));
  const x1 = Math.min(width - 1, Math.floor(cx + reach));
  for (let y = Math.max(0, Math.ceil(cy - reach)); y <= y1; y++) {
    for (let x = Math.max(0, Math.ceil(cx - reach)); x <= x1; x++) {
      const piece = labels[y * width + x];
      if (piece === 0) continue;
      const mm = Math.hypot(x + 0.5 - cx, y + 0.5 - cy) / pxPerMm;
      if (mm > reachMm || mm >= (best.get(piece)?.mm ?? Infinity)) continue;
      const place: Point = [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm];
      if (accept(place)) best.set(piece, { piece, mm, at: place });
    }
  }
  return [...best.values()].sort((a, b) => a.mm - b.mm);
}

/** Piece at a place, 0 = none. */
export function pieceAt(traced: Traced, [x, y]: Point): number {
  const i = Math.floor((x - traced.originMm[0]) * traced.pxPerMm);
  const j = Math.floor((y - traced.originMm[1]) * traced.pxPerMm);
  if (i < 0 || j < 0 || i >= traced.width || j >= traced.height) return 0;
  return traced.labels[j * traced.width + i];
}
