import { centreLines } from './centreLine.ts';
import { toMm, type Frame, type PixelBox } from './frame.ts';
import { outlineOf } from './outline.ts';
import type { Piece } from './types.ts';

/** Everything that is told of one labelled region. */
export function describePiece(
  labels: Int32Array,
  id: number,
  box: PixelBox,
  area: number,
  frame: Frame,
): Piece {
  const [x0, y0] = toMm(frame, box.i0, box.j0);
  const [x1, y1] = toMm(frame, box.i1 + 1, box.j1 + 1);
  return {
    id,
    areaMm2: area / frame.pxPerMm ** 2,
    box: { x0, y0, x1, y1 },
    outline: outlineOf(labels, id, box, frame),
    ...centreLines(labels, id, box, frame),
  };
}
