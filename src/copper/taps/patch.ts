import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { rootOf } from '../lab.ts';
import type { CopperMask } from '../types.ts';

/** The square of the sheet round a tap. Places in it are px from its own corner; arrays row-major, width*height. */
export interface Patch {
  /** Its corner on the sheet, px, and its size. */
  i0: number;
  j0: number;
  width: number;
  height: number;
  pxPerMm: number;
  /** The tap. */
  at: Point;
  /** L*, a*, b*. */
  lab: readonly [Float32Array, Float32Array, Float32Array];
  /** Log-odds of copper. */
  odds: Float32Array;
  /** 1 = copper of the mask. */
  copper: Uint8Array;
}

/** Log-odds of each chance of copper. */
const oddsOf = Float32Array.from({ length: 256 }, (_, v) => Math.log((v + 1) / (256 - v)));

/** @param tap mm @param reachMm half the square's side; it ends where the sheet does */
export function patchRound(mask: CopperMask, sheet: SquaredSheet, tap: Point, reachMm: number): Patch {
  const { width, height, pxPerMm, originMm } = mask;
  const [x, y] = [(tap[0] - originMm[0]) * pxPerMm, (tap[1] - originMm[1]) * pxPerMm];
  const reach = reachMm * pxPerMm;
  const i0 = Math.max(0, Math.floor(x - reach));
  const j0 = Math.max(0, Math.floor(y - reach));
  const w = Math.max(0, Math.min(width, Math.ceil(x + reach)) - i0);
  const h = Math.max(0, Math.min(height, Math.ceil(y + reach)) - j0);
  const plane = (): Float32Array => new Float32Array(w * h);
  const patch: Patch = {
    ...{ i0, j0, width: w, height: h, pxPerMm },
    at: [x - i0, y - j0],
    lab: [plane(), plane(), plane()],
    odds: plane(),
    copper: new Uint8Array(w * h),
  };
  const root = new Float32Array(3);
  for (let j = 0, n = 0; j < h; j++) {
    for (let i = 0, k = (j0 + j) * width + i0; i < w; i++, k++, n++) {
      rootOf(sheet.rgb, 3 * k, root);
      patch.lab[0][n] = 116 * root[1] - 16;
      patch.lab[1][n] = 500 * (root[0] - root[1]);
      patch.lab[2][n] = 200 * (root[1] - root[2]);
      patch.odds[n] = oddsOf[mask.likelihood[k]];
      patch.copper[n] = mask.filled[k];
    }
  }
  return patch;
}

/** The pixel at a place of a patch; -1 beyond it. */
export function pixelAt({ width, height }: Patch, x: number, y: number): number {
  const [i, j] = [Math.floor(x), Math.floor(y)];
  return i < 0 || j < 0 || i >= width || j >= height ? -1 : j * width + i;
}

/** The sheet's pixel under a patch's. */
export const onSheet = ({ i0, j0, width }: Patch, n: number, sheetWidth: number): number =>
  (j0 + Math.floor(n / width)) * sheetWidth + i0 + (n % width);
