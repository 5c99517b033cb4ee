import { boxMean } from '../boxMean.ts';

/** One block's displacement between two pictures, px. */
export interface Shift {
  x: number;
  y: number;
  dx: number;
  dy: number;
}

/** Least correlation at which a displacement is believed, and least contrast of a block, in root units. */
const leastCorrelation = 0.6;
const leastContrast = 0.03;

/**
 * Where each block of one picture lies in another, by normalised cross-correlation, to a fraction of a pixel. Flat
 * blocks and blocks that changed their look are left out; neighbouring blocks overlap by half.
 * @param a,b row-major lightness planes of one size
 * @param side of a block, px
 * @param reach greatest displacement looked for, px
 */
export function blockShifts(
  a: Float32Array,
  b: Float32Array,
  width: number,
  height: number,
  side: number,
  reach: number,
): Shift[] {
  const [flatA, flatB] = [a, b].map((plane) => highPass(plane, width, height, side >> 1));
  const found: Shift[] = [];
  for (let j = reach + 1; j + side + reach < height; j += side >> 1) {
    for (let i = reach + 1; i + side + reach < width; i += side >> 1) {
      const shift = matchBlock(flatA, flatB, width, i, j, side, reach);
      if (shift) found.push({ x: i + side / 2, y: j + side / 2, dx: shift[0], dy: shift[1] });
    }
  }
  return found;
}

function highPass(plane: Float32Array, width: number, height: number, reach: number): Float32Array {
  const mean = boxMean(plane, width, height, reach);
  return plane.map((v, k) => v - mean[k]);
}

function matchBlock(
  a: Float32Array,
  b: Float32Array,
  width: number,
  i: number,
  j: number,
  side: number,
  reach: number,
): [number, number] | undefined {
  const n = 2 * reach + 1;
  const scores = new Float32Array(n * n);
  let best = 0;
  for (let v = -reach; v <= reach; v++) {
    for (let u = -reach; u <= reach; u++) {
      const at = (v + reach) * n + u + reach;
      scores[at] = correlation(a, b, width, i, j, u, v, side);
      if (scores[at] > scores[best]) best = at;
    }
  }
  const [bu, bv] = [best % n, Math.floor(best / n)];
  if (scores[best] < leastCorrelation || bu === 0 || bv === 0 || bu === n - 1 || bv === n - 1)
    return undefined;
  const peak = (low: number, top: number, high: number): number =>
    (low - high) / (2 * (low - 2 * top + high) || 1);
  const du = peak(scores[best - 1], scores[best], scores[best + 1]);
  const dv = peak(scores[best - n], scores[best], scores[best + n]);
  return [bu - reach + du, bv - reach + dv];
}

function correlation(
  a: Float32Array,
  b: Float32Array,
  width: number,
  i: number,
  j: number,
  u: number,
  v: number,
  side: number,
): number {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let y = 0; y < side; y++) {
    for (let k = (j + y) * width + i, m = (j + y + v) * width + i + u, x = 0; x < side; x++, k++, m++) {
      ab += a[k] * b[m];
      aa += a[k] * a[k];
      bb += b[m] * b[m];
    }
  }
  if (aa < (leastContrast * side) ** 2) return 0;
  return ab / Math.sqrt(aa * bb || 1);
}
