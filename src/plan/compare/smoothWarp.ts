import type { Bitmap } from './bitmap.ts';
import type { Shift } from './shift.ts';
import { solvePositive } from './solvePositive.ts';

/** A smooth move, bilinear between knots: plan place = built place + move(built place). */
export interface SmoothWarp {
  knots: number;
  stepX: number;
  stepY: number;
  /** Moves at the knots, px: dx, dy by turns, row-major. */
  moves: Float64Array;
}

/** Points farther from the plan's edge than this are faults, not misfit: they have no say (Tukey's biweight). */
const REACHES_PX = [7, 6, 5, 4, 4, 3];
/** Pull between neighbouring knots, per edge point. */
const STIFFNESS = 0.005;
const MOST_POINTS = 4000;

/**
 * Bends the built picture onto the plan: Gauss-Newton on the distance of the built conductor's edge points to the
 * plan's edge, with a stiff grid of knots and a weight that drops points far off.
 * @param planDistance signed distance of the plan, px
 * @source edge points against a distance field: Fitzgibbon, "Robust registration of 2D and 3D point sets", Image and
 *   Vision Computing 21 (2003); biweight: Beaton and Tukey 1974
 */
export function fitWarp(
  built: Bitmap,
  planDistance: Float32Array,
  plan: Bitmap,
  start: Shift,
  knots = 9,
): SmoothWarp {
  const warp: SmoothWarp = {
    knots,
    stepX: (built.width - 1) / (knots - 1),
    stepY: (built.height - 1) / (knots - 1),
    moves: new Float64Array(2 * knots * knots),
  };
  for (let k = 0; k < knots * knots; k++) {
    warp.moves[2 * k] = start.dx;
    warp.moves[2 * k + 1] = start.dy;
  }
  const edge = edgePoints(built);
  if (edge.length < 40) return warp;
  for (const reach of REACHES_PX) improve(warp, edge, planDistance, plan, reach);
  return warp;
}

/** Pixels of the conductor with paper above, below, left or right, thinned evenly; x, y by turns. */
function edgePoints({ width, height, on }: Bitmap): Float32Array {
  const found: number[] = [];
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if (on[i] !== on[i + 1]) found.push(x + 0.5, y);
      if (on[i] !== on[i + width]) found.push(x, y + 0.5);
    }
  }
  const every = Math.max(1, Math.ceil(found.length / 2 / MOST_POINTS));
  const kept = new Float32Array(2 * Math.floor(found.length / 2 / every));
  for (let k = 0; k < kept.length / 2; k++) {
    kept[2 * k] = found[2 * k * every];
    kept[2 * k + 1] = found[2 * k * every + 1];
  }
  return kept;
}

/** One Gauss-Newton step; normal equations over the knots, x and y together. */
function improve(
  warp: SmoothWarp,
  edge: Float32Array,
  field: Float32Array,
  plan: Bitmap,
  reach: number,
): void {
  const n = warp.moves.length;
  const A = new Float64Array(n * n);
  const b = new Float64Array(n);
  const seat = emptySeat();
  for (let k = 0; k < edge.length; k += 2) {
    seatAt(warp, edge[k], edge[k + 1], seat);
    const x = edge[k] + blend(warp.moves, seat, 0);
    const y = edge[k + 1] + blend(warp.moves, seat, 1);
    if (x < 1 || y < 1 || x >= plan.width - 2 || y >= plan.height - 2) continue;
    const off = sample(field, plan.width, x, y);
    const t = off / reach;
    if (t * t >= 1) continue;
    const weight = (1 - t * t) * (1 - t * t);
    const gx = (sample(field, plan.width, x + 1, y) - sample(field, plan.width, x - 1, y)) / 2;
    const gy = (sample(field, plan.width, x, y + 1) - sample(field, plan.width, x, y - 1)) / 2;
    gather(A, b, n, seat, gx, gy, off, weight);
  }
  stiffen(A, b, warp, (STIFFNESS * edge.length) / 2);
  const step = solvePositive(A, b, n, 2 * warp.knots + 3);
  for (let i = 0; i < n; i++) warp.moves[i] += step[i];
}

/** The four knots round a place and their shares. */
interface Seat {
  knot: Int32Array;
  share: Float64Array;
}

function emptySeat(): Seat {
  return { knot: new Int32Array(4), share: new Float64Array(4) };
}

function seatAt({ knots, stepX, stepY }: SmoothWarp, x: number, y: number, seat: Seat): void {
  const u = Math.min(Math.max(x / stepX, 0), knots - 1);
  const v = Math.min(Math.max(y / stepY, 0), knots - 1);
  const i = Math.min(Math.floor(u), knots - 2);
  const j = Math.min(Math.floor(v), knots - 2);
  const a = u - i;
  const c = v - j;
  for (let k = 0; k < 4; k++) {
    seat.knot[k] = (j + (k >> 1)) * knots + i + (k & 1);
    seat.share[k] = (k & 1 ? a : 1 - a) * (k >> 1 ? c : 1 - c);
  }
}

function blend(moves: Float64Array, { knot, share }: Seat, axis: 0 | 1): number {
  let sum = 0;
  for (let k = 0; k < 4; k++) sum += share[k] * moves[2 * knot[k] + axis];
  return sum;
}

function gather(
  A: Float64Array,
  b: Float64Array,
  n: number,
  { knot, share }: Seat,
  gx: number,
  gy: number,
  off: number,
  weight: number,
): void {
  for (let p = 0; p < 8; p++) {
    const jp = share[p >> 1] * (p & 1 ? gy : gx);
    const row = 2 * knot[p >> 1] + (p & 1);
    b[row] -= weight * jp * off;
    for (let q = 0; q < 8; q++) {
      A[row * n + 2 * knot[q >> 1] + (q & 1)] += weight * jp * share[q >> 1] * (q & 1 ? gy : gx);
    }
  }
}

/** Neighbouring knots want the same move; the pull is on the moves reached, not on the step. */
function stiffen(A: Float64Array, b: Float64Array, { knots, moves }: SmoothWarp, pull: number): void {
  const n = moves.length;
  const tie = (p: number, q: number) => {
    for (let axis = 0; axis < 2; axis++) {
      const i = 2 * p + axis;
      const j = 2 * q + axis;
      A[i * n + i] += pull;
      A[j * n + j] += pull;
      A[i * n + j] -= pull;
      A[j * n + i] -= pull;
      b[i] -= pull * (moves[i] - moves[j]);
      b[j] -= pull * (moves[j] - moves[i]);
    }
  };
  for (let j = 0; j < knots; j++) {
    for (let i = 0; i < knots; i++) {
      if (i + 1 < knots) tie(j * knots + i, j * knots + i + 1);
      if (j + 1 < knots) tie(j * knots + i, (j + 1) * knots + i);
    }
  }
  for (let i = 0; i < n; i++) A[i * n + i] += 1e-3;
}

/** Bilinear reading of a row-major field. */
function sample(field: Float32Array, width: number, x: number, y: number): number {
  const i = Math.floor(x);
  const j = Math.floor(y);
  const a = x - i;
  const c = y - j;
  const at = j * width + i;
  const top = field[at] + a * (field[at + 1] - field[at]);
  const low = field[at + width] + a * (field[at + width + 1] - field[at + width]);
  return top + c * (low - top);
}

/**
 * The plan's signed distance laid into the built frame.
 * @returns px, row-major, built's size; NaN where the plan's picture does not reach
 */
export function pullField(warp: SmoothWarp, field: Float32Array, plan: Bitmap, built: Bitmap): Float32Array {
  const out = new Float32Array(built.width * built.height);
  const seat = emptySeat();
  const { moves } = warp;
  for (let y = 0; y < built.height; y++) {
    let x = 0;
    while (x < built.width) {
      // Within one cell of the grid the move is linear along a row, so two readings serve the whole run.
      const end = Math.min(
        built.width,
        Math.floor(Math.floor(x / warp.stepX + 1e-9) * warp.stepX + warp.stepX) + 1,
      );
      seatAt(warp, x, y, seat);
      const fromX = blend(moves, seat, 0);
      const fromY = blend(moves, seat, 1);
      const last = Math.max(x + 1, end - 1);
      seatAt(warp, last, y, seat);
      const slopeX = (blend(moves, seat, 0) - fromX) / (last - x);
      const slopeY = (blend(moves, seat, 1) - fromY) / (last - x);
      for (let k = x; k < end; k++) {
        const px = k + fromX + (k - x) * slopeX;
        const py = y + fromY + (k - x) * slopeY;
        out[y * built.width + k] = reaches(plan, px, py) ? sampleClamped(field, plan, px, py) : NaN;
      }
      x = Math.max(end, x + 1);
    }
  }
  return out;
}

function reaches(plan: Bitmap, x: number, y: number): boolean {
  return x >= -0.5 && y >= -0.5 && x <= plan.width - 0.5 && y <= plan.height - 0.5;
}

function sampleClamped(field: Float32Array, plan: Bitmap, x: number, y: number): number {
  return sample(
    field,
    plan.width,
    Math.min(Math.max(x, 0), plan.width - 1.001),
    Math.min(Math.max(y, 0), plan.height - 1.001),
  );
}

/** The move at a built place, px. */
export function moveAt(warp: SmoothWarp, x: number, y: number): { dx: number; dy: number } {
  const seat = emptySeat();
  seatAt(warp, x, y, seat);
  return { dx: blend(warp.moves, seat, 0), dy: blend(warp.moves, seat, 1) };
}
