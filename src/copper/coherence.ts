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
  const xx = new Float32Array(mask.length);
  const yy = new Float32Array(mask.length);
  const xy = new Float32Array(mask.length);
  for (let j = 1; j < height - 1; j++) {
    for (let k = j * width + 1; k < (j + 1) * width - 1; k++) {
      const gx = soft[k + 1] - soft[k - 1];
      const gy = soft[k + width] - soft[k - width];
      xx[k] = gx * gx;
      yy[k] = gy * gy;
      xy[k] = gx * gy;
    }
  }
  const [a, b, c] = [xx, yy, xy].map((plane) => boxMean(plane, width, height, reach));
  return (k) => {
    const sum = a[k] + b[k];
    const apart = a[k] - b[k];
    return sum > 1e-6 ? Math.fround(Math.sqrt(apart * apart + 4 * c[k] * c[k]) / sum) : 0;
  };
}
