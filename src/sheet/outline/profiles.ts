import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { distort, undistort } from '../lens.ts';
import type { Lens } from '../lens.ts';

/** An edge seen on one profile across a side. */
export interface EdgePoint {
  /** Photo px. */
  at: Point;
  /** Share 0..1 of the way along the side. */
  along: number;
  /** Colour step across it, levels. */
  step: number;
}

/** Places of the profiles along one side, and how far each reaches. */
export interface ProfilePlan {
  count: number;
  /** Each profile looks this far to both sides, photo px. */
  reach: number;
  /** Each side of the step is a mean over this many px. */
  depth: number;
}

/**
 * Looks across one side of a quadrilateral for the colour step, on profiles square to it.
 * The ends are left out (5 %), where corners, fingers and shadows meet.
 * @param quad corners in photo px, clockwise as seen, so that inside lies to the right of each side
 * @returns at most one edge a profile, with sub-pixel place
 */
export function lookAcross(
  photo: Photo,
  quad: Quad,
  side: number,
  lens: Lens,
  plan: ProfilePlan,
): EdgePoint[] {
  return crestsAcross(photo, quad, side, lens, plan, 1).flatMap(([strongest]) =>
    strongest.onRim ? [] : [strongest],
  );
}

/** An edge of a profile that has several, and whether it is only the rise towards one beyond the profile's end. */
export interface Crest extends EdgePoint {
  onRim: boolean;
}

/**
 * The strongest edges on each profile across a side, the strongest first; else as `lookAcross`.
 * @param most how many on each at most
 */
export function crestsAcross(
  photo: Photo,
  quad: Quad,
  side: number,
  lens: Lens,
  plan: ProfilePlan,
  most: number,
): Crest[][] {
  const a = undistort(lens, quad[side]);
  const b = undistort(lens, quad[(side + 1) % 4]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const inward: Point = [-along[1], along[0]];
  const n = 2 * (plan.reach + plan.depth) + 1;
  const profile = new Float32Array(3 * n);
  const crests: Crest[][] = [];
  const half = Math.min(4, Math.max(1, Math.round(plan.depth / 2)));
  for (let k = 0; k < plan.count; k++) {
    const share = 0.05 + (0.9 * (k + 0.5)) / plan.count;
    const on = distort(lens, [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
    if (!readProfile(photo, on, along, inward, half, profile, n)) continue;
    crests.push(
      strongestSteps(stepsOf(profile, plan), plan.reach, most).map(({ offset, step, onRim }) => ({
        at: [on[0] + inward[0] * offset, on[1] + inward[1] * offset],
        along: share,
        step,
        onRim,
      })),
    );
  }
  return crests;
}

/** Three planes along the inward normal, each a mean over 2 half + 1 px along the side; false when off the picture. */
function readProfile(
  photo: Photo,
  on: Point,
  along: Point,
  inward: Point,
  half: number,
  out: Float32Array,
  n: number,
): boolean {
  const { rgba, width, height } = photo;
  const mid = (n - 1) / 2;
  for (let s = 0; s < n; s++) {
    let r = 0;
    let g = 0;
    let b = 0;
    for (let t = -half; t <= half; t++) {
      const x = on[0] + inward[0] * (s - mid) + along[0] * t - 0.5;
      const y = on[1] + inward[1] * (s - mid) + along[1] * t - 0.5;
      const ix = Math.floor(x);
      const iy = Math.floor(y);
      if (ix < 0 || iy < 0 || ix + 1 >= width || iy + 1 >= height) return false;
      const fx = x - ix;
      const fy = y - iy;
      const p = (iy * width + ix) * 4;
      const q = p + width * 4;
      const w11 = fx * fy;
      const w01 = fx - w11;
      const w10 = fy - w11;
      const w00 = 1 - fx - w10;
      r += w00 * rgba[p] + w01 * rgba[p + 4] + w10 * rgba[q] + w11 * rgba[q + 4];
      g += w00 * rgba[p + 1] + w01 * rgba[p + 5] + w10 * rgba[q + 1] + w11 * rgba[q + 5];
      b += w00 * rgba[p + 2] + w01 * rgba[p + 6] + w10 * rgba[q + 2] + w11 * rgba[q + 6];
    }
    const share = 1 / (2 * half + 1);
    out[3 * s] = ((r + 2 * g + b) / 4) * share;
    out[3 * s + 1] = (r - g) * share;
    out[3 * s + 2] = (b - (r + g) / 2) * share;
  }
  return true;
}

/** At each offset -reach..reach the step between the means of `depth` px on either side. */
function stepsOf(profile: Float32Array, { reach, depth }: ProfilePlan): Float32Array {
  const steps = new Float32Array(2 * reach + 1);
  for (let k = 0; k <= 2 * reach; k++) {
    const mid = k + depth;
    let size = 0;
    for (let c = 0; c < 3; c++) {
      let d = 0;
      for (let m = 1; m <= depth; m++) d += profile[3 * (mid + m) + c] - profile[3 * (mid - m) + c];
      size += (d / depth) ** 2;
    }
    steps[k] = Math.sqrt(size);
  }
  return steps;
}

/** The offsets (px, inward positive) with the largest steps about them, largest first. */
function strongestSteps(steps: Float32Array, reach: number, most: number) {
  const crests: { offset: number; step: number; onRim: boolean }[] = [];
  for (let k = 0; k < steps.length; k++) {
    // Of equal steps the first counts.
    if (steps[k] <= (steps[k - 1] ?? -1) || steps[k] < (steps[k + 1] ?? -1)) continue;
    if (crests.length === most && steps[k] <= crests[most - 1].step) continue;
    const crest = {
      offset: k - reach + crestShift(steps, k),
      step: steps[k],
      onRim: k === 0 || k === 2 * reach,
    };
    const place = crests.findIndex(({ step }) => step < crest.step);
    crests.splice(place < 0 ? crests.length : place, 0, crest);
    if (crests.length > most) crests.pop();
  }
  return crests;
}

/** The step response is a tent; its top is found from the two flanks, which noise moves less than the peak itself. */
function crestShift(steps: Float32Array, k: number): number {
  if (k === 0 || k === steps.length - 1) return 0;
  const bend = steps[k - 1] - 2 * steps[k] + steps[k + 1];
  return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (steps[k - 1] - steps[k + 1])) / bend)) : 0;
}
