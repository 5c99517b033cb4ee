import type { Photo } from '../photo/index.ts';

/** A photograph at 1/2^level of its scale: a pixel is red, green, blue and 255 from its low byte up. Pixel (i, j) covers photograph px [i, i+1) * step. */
export interface Shrunk {
  width: number;
  height: number;
  step: number;
  pixels: Int32Array;
}

/** Several stages want the same halves, so those of a photograph are made once: each, from the first on, half the one before. */
const halves = new WeakMap<Photo, Shrunk[]>();

/**
 * Halves a photograph `level` times by 2x2 means: the area sampling that keeps fine lines from aliasing. An odd last row
 * or column is left out.
 */
export function shrinkPhoto(photo: Photo, level: number): Shrunk {
  const known = halves.get(photo) ?? [];
  halves.set(photo, known);
  while (known.length < level) known.push(halve(known.at(-1) ?? whole(photo)));
  return level === 0 ? whole(photo) : known[level - 1];
}

function whole({ width, height, rgba }: Photo): Shrunk {
  const aligned = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  return {
    width,
    height,
    step: 1,
    pixels: new Int32Array(aligned.buffer, aligned.byteOffset, width * height),
  };
}

/** Red and blue of a pixel, or its green, each with room above it to add up. */
const redBlue = 0xff00ff;

function halve({ width: across, height: down, step, pixels: from }: Shrunk): Shrunk {
  const width = Math.max(1, across >> 1);
  const height = Math.max(1, down >> 1);
  const pixels = new Int32Array(width * height);
  const right = across > 1 ? 1 : 0;
  const below = down > 1 ? across : 0;
  for (let j = 0, o = 0; j < height; j++) {
    for (let i = 0, k = 2 * j * across; i < width; i++, o++, k += 2) {
      const a = from[k];
      const b = from[k + right];
      const c = from[k + below];
      const d = from[k + below + right];
      const rb = (a & redBlue) + (b & redBlue) + (c & redBlue) + (d & redBlue) + 0x20002;
      const g = ((a >>> 8) & 255) + ((b >>> 8) & 255) + ((c >>> 8) & 255) + ((d >>> 8) & 255) + 2;
      pixels[o] = ((rb >>> 2) & redBlue) | ((g >>> 2) << 8) | 0xff000000;
    }
  }
  return { width, height, step: 2 * step, pixels };
}
