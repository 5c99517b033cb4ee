import type { Flap } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import type { Point } from '../../geometry/index.ts';
import { isCopper } from './acrossFold.ts';

/** Two papers' edges blur into the table so far, mm: copper on both sides of a fold is taken to run over it. */
const blurredMm = 1.2;
const stepMm = 0.05;

/** Joins copper that reaches the fold on the base and, opposite, on the flap. The mask is changed in place. */
export function closeFold(mask: CopperMask, { fold: [a, b] }: Flap): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  for (let t = 0; t <= length; t += stepMm) {
    const across = (mm: number): Point => [a[0] + t * ux - mm * uy, a[1] + t * uy + mm * ux];
    if (isCopper(mask, across(blurredMm)) && isCopper(mask, across(-blurredMm))) {
      for (let mm = -blurredMm; mm <= blurredMm; mm += stepMm) paint(mask, across(mm));
    }
  }
}

function paint(mask: CopperMask, [x, y]: Point): void {
  const { width, height, pxPerMm, originMm } = mask;
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return;
  const k = j * width + i;
  mask.filled[k] = 1;
  mask.strict[k] = 1;
  mask.likelihood[k] = 255;
}
