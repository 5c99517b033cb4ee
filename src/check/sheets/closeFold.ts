import type { Flap } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import type { Point } from '../../geometry/index.ts';
import { isCopper } from './acrossFold.ts';

/** Two papers' edges blur into the table so far, mm: copper that comes so near a fold on both sides runs over it. */
const blurredMm = 2;
const stepMm = 0.05;

/** Joins copper that reaches the fold on the base and, opposite, on the flap. The mask is changed in place. */
export function closeFold(mask: CopperMask, { fold: [a, b] }: Flap): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  for (let t = 0; t <= length; t += stepMm) {
    const across = (mm: number): Point => [a[0] + t * ux - mm * uy, a[1] + t * uy + mm * ux];
    const [left, right] = [firstCopper(mask, across, -1), firstCopper(mask, across, 1)];
    if (left === undefined || right === undefined) continue;
    for (let mm = -left; mm <= right; mm += stepMm) paint(mask, across(mm));
  }
}

/** How far from the fold copper begins on one side, mm. */
function firstCopper(mask: CopperMask, across: (mm: number) => Point, side: 1 | -1): number | undefined {
  for (let mm = stepMm; mm <= blurredMm; mm += stepMm) if (isCopper(mask, across(side * mm))) return mm;
  return undefined;
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
