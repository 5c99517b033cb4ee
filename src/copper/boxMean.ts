/**
 * Mean over the square window of side 2*reach+1 round each pixel, cut at the borders; running sums, so the reach costs nothing.
 * @param plane row-major, width*height
 */
export function boxMean(
  plane: Float32Array | Uint8Array,
  width: number,
  height: number,
  reach: number,
): Float32Array {
  const rows = new Float32Array(width * height);
  // One kind of array in the loops, so that they are compiled for it alone.
  const values = plane instanceof Float32Array ? plane : new Float32Array(plane);
  for (let j = 0; j < height; j++) {
    const at = j * width;
    let sum = 0;
    for (let i = 0; i < Math.min(reach, width); i++) sum += values[at + i];
    for (let i = 0; i < width; i++) {
      if (i + reach < width) sum += values[at + i + reach];
      if (i > reach) sum -= values[at + i - reach - 1];
      rows[at + i] = sum / (Math.min(width - 1, i + reach) - Math.max(0, i - reach) + 1);
    }
  }
  const out = new Float32Array(width * height);
  const sums = new Float64Array(width);
  const add = (j: number, sign: number): void => {
    for (let i = 0, k = j * width; i < width; i++, k++) sums[i] += sign * rows[k];
  };
  for (let j = 0; j < Math.min(reach, height); j++) add(j, 1);
  for (let j = 0; j < height; j++) {
    if (j + reach < height) add(j + reach, 1);
    if (j > reach) add(j - reach - 1, -1);
    const share = 1 / (Math.min(height - 1, j + reach) - Math.max(0, j - reach) + 1);
    for (let i = 0, k = j * width; i < width; i++, k++) out[k] = sums[i] * share;
  }
  return out;
}
