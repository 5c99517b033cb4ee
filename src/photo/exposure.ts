import type { Photo } from './types.ts';

export interface Exposure {
  /** Share of the pixels in which all three channels are burnt out, 0..1. */
  clipped: number;
  /** Share of the pixels that are nearly black, 0..1. */
  black: number;
  /** Median lightness, 0..255. */
  middle: number;
}

/** Lightness of every few pixels, counted (about a quarter of a million at most). */
export function exposureOf({ rgba, width, height }: Photo): Exposure {
  const stride = Math.max(1, Math.round(Math.sqrt((width * height) / 2.5e5)));
  const counts = new Uint32Array(256);
  let clipped = 0;
  let all = 0;
  for (let y = 0; y < height; y += stride) {
    for (let x = 0; x < width; x += stride) {
      const p = (y * width + x) * 4;
      if (rgba[p] >= 253 && rgba[p + 1] >= 253 && rgba[p + 2] >= 253) clipped++;
      counts[(rgba[p] + 2 * rgba[p + 1] + rgba[p + 2]) >> 2]++;
      all++;
    }
  }
  let black = 0;
  for (let v = 0; v < 16; v++) black += counts[v];
  let middle = 0;
  for (let sum = counts[0]; sum < all / 2; sum += counts[middle]) middle++;
  return { clipped: clipped / all, black: black / all, middle };
}
