import type { CopperMask } from '../copper/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { rootOf } from '../copper/index.ts';
import { toPx } from './frame.ts';
import { tangent } from './polyline.ts';
import type { Piece } from './types.ts';

const root = new Float32Array(3);

/** Pixels on each side of a strip's border that are looked at. */
const reach = 8;

/**
 * Standard deviation, px, of the blur with which the picture shows the strips' borders, which are sharp: the step's
 * height over its steepest slope is sqrt(2 pi) sigma. The sharpest third counts, as rough borders only look softer.
 */
export function borderBlur(
  pieces: readonly Piece[],
  mask: CopperMask,
  sheet: SquaredSheet,
): number | undefined {
  const found: number[] = [];
  for (const { lines } of pieces) {
    for (const { path, widths } of lines) {
      for (let k = 4; k < path.length - 4; k += 6) {
        const [x, y] = toPx(mask, path[k]);
        const [tx, ty] = tangent(path, k, 2);
        const half = (widths[k] / 2) * mask.pxPerMm;
        for (const side of [-1, 1]) {
          const sigma = blurAt(sheet, x - side * ty * half, y + side * tx * half, -side * ty, side * tx);
          if (sigma) found.push(sigma);
        }
      }
    }
  }
  if (found.length < 10) return undefined;
  found.sort((a, b) => a - b);
  return found[Math.floor(found.length / 3)];
}

function blurAt(
  { width, height, rgb }: SquaredSheet,
  x: number,
  y: number,
  nx: number,
  ny: number,
): number | undefined {
  const profile: number[] = [];
  for (let t = -reach; t <= reach; t++) {
    const i = Math.floor(x + t * nx);
    const j = Math.floor(y + t * ny);
    if (i < 0 || j < 0 || i >= width || j >= height) return undefined;
    const k = 3 * (j * width + i);
    rootOf(rgb, k, root);
    profile.push(116 * root[1] - 16);
  }
  const mean = (values: number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
  const height2 = Math.abs(mean(profile.slice(0, 4)) - mean(profile.slice(-4)));
  if (height2 < 20) return undefined;
  let slope = 0;
  for (let t = 1; t < profile.length - 1; t++)
    slope = Math.max(slope, Math.abs(profile[t + 1] - profile[t - 1]) / 2);
  return height2 / slope / Math.sqrt(2 * Math.PI);
}
