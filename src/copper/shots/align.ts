import { boxMean } from '../boxMean.ts';
import { valueAt, type Plane } from './plane.ts';
import { firstCubic, moveAt, still, termCount, terms, type SmoothMove } from './smoothMove.ts';
import { solveDefinite } from './solveDefinite.ts';

/** Blurs from coarse to fine, mm, and steps at each. */
const blursMm = [2, 1, 0.5] as const;
const steps = 6;
/** A slope under this over a blur's width is no edge, squared. */
const leastEdge = 0.02;
/** How strongly a displacement is drawn to none, as a share of what the picture says of it, and its bends to none. */
const ridge = 0.02;
const ridgeOfBends = 0.1;

/**
 * The smooth displacement that brings one plane over another, by Gauss and Newton's method on what lies off at the edges,
 * from coarse to fine. An edge tells only across itself, so a straight strip can slide along itself in no block; what one
 * shot alone shows, a finger or a glint, lies far off and weighs little.
 * @returns the displacement, and the median distance between the edges then, mm
 * @source Lucas, Kanade 1981; Geman, McClure 1987 for the weights
 */
export function align(a: Plane, b: Plane, pxPerMm: number): { move: SmoothMove; misfitMm: number } {
  let step: Step = { move: still(a.width, a.height), off: Infinity };
  for (const blurMm of blursMm) {
    const blur = blurMm * pxPerMm;
    const reach = Math.max(1, Math.round(blur / 2));
    const [p, q] = [blurred(a, reach), blurred(b, reach)];
    for (let n = 0; n < steps; n++) step = improve(p, q, step.move, blur);
  }
  return { move: step.move, misfitMm: step.off / pxPerMm };
}

function blurred({ width, height, values }: Plane, reach: number): Plane {
  const once = boxMean(values, width, height, reach);
  return { width, height, values: boxMean(once, width, height, reach) };
}

interface Step {
  move: SmoothMove;
  /** Median distance of the edges before the step, px. */
  off: number;
}

function improve(a: Plane, b: Plane, move: SmoothMove, blur: number): Step {
  const n = 2 * termCount;
  const sums = new Float64Array(n * n);
  const right = new Float64Array(n);
  const row = new Float64Array(n);
  const basis = new Float64Array(termCount);
  const offs: number[] = [];
  forEdges(a, b, move, leastEdge / (blur * blur), (i, j, gx, gy, lacks) => {
    const off = Math.abs(lacks) / Math.hypot(gx, gy);
    offs.push(off);
    const weight = 1 / (1 + (off / blur) ** 2) ** 2;
    terms((2 * i + 1) / a.width - 1, (2 * j + 1) / a.height - 1, basis);
    for (let p = 0; p < termCount; p++) {
      row[p] = gx * basis[p];
      row[termCount + p] = gy * basis[p];
    }
    for (let p = 0; p < n; p++) {
      const weighed = weight * row[p];
      right[p] += weighed * lacks;
      for (let q = p; q < n; q++) sums[p * n + q] += weighed * row[q];
    }
  });
  if (offs.length === 0) return { move, off: Infinity };
  drawToNone(sums, right, move);
  const by = solveDefinite(sums, right, n);
  return {
    move: {
      ...move,
      right: move.right.map((v, p) => v + by[p]),
      down: move.down.map((v, p) => v + by[termCount + p]),
    },
    off: offs.sort((p, q) => p - q)[offs.length >> 1],
  };
}

/** Fills the lower half and adds the ridge. */
function drawToNone(sums: Float64Array, right: Float64Array, move: SmoothMove): void {
  const n = 2 * termCount;
  let mean = 0;
  for (let p = 0; p < n; p++) mean += sums[p * n + p] / n;
  for (let p = 0; p < n; p++) {
    for (let q = 0; q < p; q++) sums[p * n + q] = sums[q * n + p];
    const draw = mean * (p % termCount < firstCubic ? ridge : ridgeOfBends);
    sums[p * n + p] += draw;
    right[p] -= draw * (p < termCount ? move.right[p] : move.down[p - termCount]);
  }
}

type AtEdge = (i: number, j: number, gx: number, gy: number, lacks: number) => void;

/** Calls for each pixel at an edge of the first plane, with the slope of both and how much the second, moved, lacks. */
function forEdges(a: Plane, b: Plane, move: SmoothMove, leastSlope2: number, call: AtEdge): void {
  const { width, height, values } = a;
  const at = new Float64Array(2);
  for (let j = 1; j + 1 < height; j++) {
    for (let i = 1, k = j * width + 1; i + 1 < width; i++, k++) {
      const gx = (values[k + 1] - values[k - 1]) / 2;
      const gy = (values[k + width] - values[k - width]) / 2;
      if (gx * gx + gy * gy < leastSlope2) continue;
      moveAt(move, i, j, at);
      const [x, y] = [i + at[0], j + at[1]];
      if (x < 1 || y < 1 || x >= width - 2 || y >= height - 2) continue;
      const hx = (valueAt(b, x + 1, y) - valueAt(b, x - 1, y)) / 2;
      const hy = (valueAt(b, x, y + 1) - valueAt(b, x, y - 1)) / 2;
      const [mx, my] = [(gx + hx) / 2, (gy + hy) / 2];
      if (mx !== 0 || my !== 0) call(i, j, mx, my, values[k] - valueAt(b, x, y));
    }
  }
}
