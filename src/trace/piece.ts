import { centreLines } from './centreLine.ts';
import type { CopperMask } from '../copper/index.ts';
import { toMm, type Frame, type PixelBox } from './frame.ts';
import { outlineOf } from './outline.ts';
import type { Piece } from './types.ts';

/** Everything that is told of one labelled region. */
export function describePiece(
  labels: Int32Array,
  id: number,
  box: PixelBox,
  area: number,
  mask: CopperMask,
): Piece {
  const frame: Frame = mask;
  const [x0, y0] = toMm(frame, box.i0, box.j0);
  const [x1, y1] = toMm(frame, box.i1 + 1, box.j1 + 1);
  return {
    id,
    areaMm2: area / frame.pxPerMm ** 2,
    box: { x0, y0, x1, y1 },
    outline: outlineOf(labels, id, box, frame),
    sure: surenessOf(labels, id, box, mask),
    ...centreLines(labels, id, box, frame),
  };
}

function surenessOf(labels: Int32Array, id: number, { i0, j0, i1, j1 }: PixelBox, mask: CopperMask): number {
  if (mask.by !== 'learned') return 1;
  let sum = 0;
  let count = 0;
  for (let j = j0; j <= j1; j += 2) {
    for (let i = i0, k = j * mask.width + i; i <= i1; i += 2, k += 2) {
      if (labels[k] !== id) continue;
      sum += mask.likelihood[k];
      count++;
    }
  }
  return count === 0 ? 1 : sum / count / 255;
}
