import type { Point } from '../../geometry/index.ts';
import type { Traced } from '../../trace/index.ts';

/** Piece at a place in mm: its id, 0 on paper, -1 beyond what the photograph shows. */
export function pieceAt({ width, height, pxPerMm, originMm, labels }: Traced, [x, y]: Point): number {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return -1;
  return labels[j * width + i];
}
