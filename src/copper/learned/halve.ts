import type { RgbPicture } from '../../engine/planes.ts';

/** A picture at half its scale, by means of 2 x 2 pixels; an odd last row or column is left out. */
export function halve({ width, height, rgb }: RgbPicture): RgbPicture {
  const half = { width: Math.max(1, width >> 1), height: Math.max(1, height >> 1) };
  const out = new Uint8Array(half.width * half.height * 3);
  const right = width > 1 ? 3 : 0;
  const down = height > 1 ? width * 3 : 0;
  let o = 0;
  for (let j = 0; j < half.height; j++) {
    let p = 2 * j * width * 3;
    for (let i = 0; i < half.width; i++, p += 3) {
      for (let c = 0; c < 3; c++, p++, o++)
        out[o] = (rgb[p] + rgb[p + right] + rgb[p + down] + rgb[p + down + right] + 2) >> 2;
    }
  }
  return { ...half, rgb: out };
}

/** A map of half scale brought back to width x height, bilinear; beyond its last centres the edge is repeated. */
export function double(
  map: Uint8Array,
  half: { width: number; height: number },
  { width, height }: { width: number; height: number },
): Uint8Array {
  const out = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    const near = Math.min(half.height - 1, j >> 1) * half.width;
    const far = Math.min(half.height - 1, Math.max(0, (j >> 1) + (j % 2 ? 1 : -1))) * half.width;
    for (let i = 0; i < width; i++) {
      const x = Math.min(half.width - 1, i >> 1);
      const beside = Math.min(half.width - 1, Math.max(0, (i >> 1) + (i % 2 ? 1 : -1)));
      const sum = 9 * map[near + x] + 3 * (map[near + beside] + map[far + x]) + map[far + beside];
      out[j * width + i] = (sum + 8) >> 4;
    }
  }
  return out;
}
