import { boxMean } from './boxMean.ts';

/**
 * How much the borders of a mask round a pixel run in one direction, 0..1: the structure tensor's coherence,
 * (l1 - l2) / (l1 + l2). The two sides of a strip are parallel and give 1, the border of a blot runs all ways.
 * @source B. Jaehne, "Digital Image Processing", structure tensor; window `reach` on each side, px
 * @returns the coherence at a pixel, by its place: few are asked
 */
export function borderCoherence(
  mask: Uint8Array,
  width: number,
  height: number,
  reach: number,
): (k: number) => number {
  const soft = boxMean(mask, width, height, 1);
  return (k) => {
    const [i, j] = [k % width, Math.floor(k / width)];
    const [left, right] = [Math.max(1, i - reach), Math.min(width - 2, i + reach)];
    let [xx, yy, xy] = [0, 0, 0];
    for (let y = Math.max(1, j - reach); y <= Math.min(height - 2, j + reach); y++) {
      for (let n = y * width + left; n <= y * width + right; n++) {
        const gx = soft[n + 1] - soft[n - 1];
        const gy = soft[n + width] - soft[n - width];
        xx += gx * gx;
        yy += gy * gy;
        xy += gx * gy;
      }
    }
    const sum = xx + yy;
    return sum > leastSum ? Math.sqrt((xx - yy) ** 2 + 4 * xy * xy) / sum : 0;
  };
}

/** Less than this is no border, only what sums leave. */
const leastSum = 1e-5;
