import type { SquaredSheet } from '../../sheet/index.ts';
import { moveAt, type SmoothMove } from './smoothMove.ts';

/** A shot brought over the first one, bilinear; past its border the nearest pixel counts. */
export function layOver(sheet: SquaredSheet, move: SmoothMove): SquaredSheet {
  const { width, height, rgb } = sheet;
  const out = new Uint8Array(rgb.length);
  const at = new Float64Array(2);
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k += 3) {
      moveAt(move, i, j, at);
      const x = Math.min(width - 1.001, Math.max(0, i + at[0]));
      const y = Math.min(height - 1.001, Math.max(0, j + at[1]));
      const u = x - Math.floor(x);
      const v = y - Math.floor(y);
      const p = 3 * (Math.floor(y) * width + Math.floor(x));
      for (let c = p; c < p + 3; c++) {
        const top = rgb[c] * (1 - u) + rgb[c + 3] * u;
        const low = rgb[c + 3 * width] * (1 - u) + rgb[c + 3 * width + 3] * u;
        out[k + c - p] = top * (1 - v) + low * v + 0.5;
      }
    }
  }
  return { ...sheet, rgb: out };
}
