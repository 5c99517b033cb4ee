import type { SquaredSheet } from '../../sheet/index.ts';

/** Ink is at least this much darker than the paper round it (share of the paper's grey). */
const inkContrast = 0.78;

/** Grey of a squared sheet by ITU-R BT.601 luma weights, row-major, 8 bits. */
export function greyOf(sheet: Pick<SquaredSheet, 'width' | 'height' | 'rgb'>): Uint8Array {
  const { rgb } = sheet;
  const grey = new Uint8Array(sheet.width * sheet.height);
  for (let i = 0, p = 0; i < grey.length; i++, p += 3) {
    grey[i] = (rgb[p] * 77 + rgb[p + 1] * 150 + rgb[p + 2] * 29) >> 8;
  }
  return grey;
}

/**
 * Marks ink: darker than the mean of the paper round it.
 *
 * @param avoid 1 where something else lies (copper, lamps); no ink is said there
 * @param reachPx half the side of the square whose mean is the paper
 * @returns row-major, 1 = ink
 */
export function inkMask(
  grey: Uint8Array,
  width: number,
  height: number,
  avoid: Uint8Array,
  reachPx: number,
): Uint8Array {
  const { sums, counts } = integrals(grey, width, height, avoid);
  const ink = new Uint8Array(width * height);
  const stride = width + 1;
  for (let y = 0; y < height; y++) {
    const y0 = Math.max(0, y - reachPx) * stride;
    const y1 = Math.min(height, y + reachPx + 1) * stride;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (avoid[i]) continue;
      const x0 = Math.max(0, x - reachPx);
      const x1 = Math.min(width, x + reachPx + 1);
      const sum = sums[y1 + x1] - sums[y1 + x0] - sums[y0 + x1] + sums[y0 + x0];
      const count = counts[y1 + x1] - counts[y1 + x0] - counts[y0 + x1] + counts[y0 + x0];
      if (grey[i] * count < inkContrast * sum) ink[i] = 1;
    }
  }
  return ink;
}

/** Summed-area tables of grey and of the number of counted pixels (Crow 1984). */
function integrals(grey: Uint8Array, width: number, height: number, avoid: Uint8Array) {
  const stride = width + 1;
  const sums = new Float64Array(stride * (height + 1));
  const counts = new Int32Array(stride * (height + 1));
  for (let y = 0; y < height; y++) {
    let rowSum = 0;
    let rowCount = 0;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (!avoid[i]) {
        rowSum += grey[i];
        rowCount++;
      }
      const at = (y + 1) * stride + x + 1;
      sums[at] = sums[at - stride] + rowSum;
      counts[at] = counts[at - stride] + rowCount;
    }
  }
  return { sums, counts };
}
