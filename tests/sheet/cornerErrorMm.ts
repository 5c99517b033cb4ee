import type { Quad } from '../../src/geometry/index.ts';
import { applyHomography, homographyFromQuad, invertHomography, turnCorners } from '../../src/sheet/index.ts';

/** Largest corner error in mm on the base, over the turns that the base's shape allows. */
export function cornerErrorMm(found: Quad, truth: Quad, base: { width: number; height: number }): number {
  const toMm = invertHomography(homographyFromQuad(truth, base));
  const square = Math.abs(base.width - base.height) < 0.01 * base.width;
  const truthMm = truth.map((p) => applyHomography(toMm, p));
  const errors = (square ? [0, 1, 2, 3] : [0, 2]).map((turns) => {
    const turned = turnCorners(found, turns).map((p) => applyHomography(toMm, p));
    return Math.max(...turned.map((p, i) => Math.hypot(p[0] - truthMm[i][0], p[1] - truthMm[i][1])));
  });
  return Math.min(...errors);
}
