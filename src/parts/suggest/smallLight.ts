import type { SquaredSheet } from '../../sheet/index.ts';

/** The sheet's lightness at a coarse scale, row-major, levels. */
export interface SmallLight {
  width: number;
  height: number;
  pxPerMm: number;
  light: Float32Array;
}

/** Means over square blocks, so that about `pxPerMm` are left to the mm. */
export function smallLight(sheet: SquaredSheet, pxPerMm: number): SmallLight {
  const { rgb, width: from } = sheet;
  const block = Math.max(1, Math.round(sheet.pxPerMm / pxPerMm));
  const width = Math.floor(from / block);
  const height = Math.floor(sheet.height / block);
  const light = new Float32Array(width * height);
  const share = 1 / (4 * block * block);
  for (let y = 0; y < height * block; y++) {
    const row = Math.floor(y / block) * width;
    let p = y * from * 3;
    for (let x = 0; x < width; x++) {
      for (let k = 0; k < block; k++, p += 3)
        light[row + x] += (rgb[p] + 2 * rgb[p + 1] + rgb[p + 2]) * share;
    }
  }
  return { width, height, pxPerMm: sheet.pxPerMm / block, light };
}

/** Gradient at a pixel that is not at the rim, levels a pixel. */
export function lightAt({ light, width }: SmallLight, x: number, y: number) {
  const i = y * width + x;
  const gx = (light[i + 1] - light[i - 1]) / 2;
  const gy = (light[i + width] - light[i - width]) / 2;
  return { gx, gy, size: Math.sqrt(gx * gx + gy * gy) };
}
