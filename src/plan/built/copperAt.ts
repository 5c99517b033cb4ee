import type { Point } from '../../geometry/index.ts';
import { isUnseen, type Traced } from '../../trace/index.ts';

/** Piece at a place in mm: its id, 0 on paper, -1 beyond what the photograph shows and where it is burnt out or black. */
export function pieceAt(traced: Traced, [x, y]: Point): number {
  const { width, height, pxPerMm, originMm, labels } = traced;
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return -1;
  const piece = labels[j * width + i];
  return piece === 0 && isUnseen(traced, [x, y]) ? -1 : piece;
}
