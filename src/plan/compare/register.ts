import type { Bitmap } from './bitmap.ts';
import { findShift } from './shift.ts';
import type { Shift } from './shift.ts';
import { signedDistance } from './signedDistance.ts';
import { fitWarp, pullField } from './smoothWarp.ts';
import type { SmoothWarp } from './smoothWarp.ts';

/** Two pictures in one frame, the built picture's. */
export interface Registered {
  width: number;
  height: number;
  built: Uint8Array;
  /** The plan laid onto the built picture; 0 where its picture does not reach. */
  plan: Uint8Array;
  /** Signed distances to the conductor's edge, px, negative inside; the plan's is NaN where it does not reach. */
  builtDistance: Float32Array;
  planDistance: Float32Array;
  /** Pixels where the two differ, indices in reading order. */
  differs: number[];
  shift: Shift;
  warp: SmoothWarp;
  /** How much wider (px a side) the built conductor is throughout; already allowed for. */
  swellPx: number;
}

/** No step looks farther from an edge than this. */
const FAR_PX = 10;
/** More than this a side is no matter of exposure or etching any more. */
const MOST_SWELL_PX = 1;

/** Lays the plan onto the built picture: whole shift, smooth bend, then one common swelling of all edges. */
export function register(built: Bitmap, plan: Bitmap, reachPx: number): Registered {
  const { width, height } = built;
  const shift = findShift(built, plan, reachPx);
  const ownDistance = signedDistance(plan, FAR_PX);
  const warp = fitWarp(built, ownDistance, plan, shift);
  const planDistance = pullField(warp, ownDistance, plan, built);
  const builtDistance = signedDistance(built, FAR_PX);
  const swellPx = commonSwell(built.on, builtDistance, planDistance);
  const laid = new Uint8Array(width * height);
  const differs: number[] = [];
  for (let i = 0; i < laid.length; i++) {
    planDistance[i] -= swellPx;
    laid[i] = planDistance[i] < 0 ? 1 : 0;
    if (laid[i] !== built.on[i] && !Number.isNaN(planDistance[i])) differs.push(i);
  }
  return {
    width,
    height,
    built: built.on,
    plan: laid,
    builtDistance,
    planDistance,
    differs,
    shift,
    warp,
    swellPx,
  };
}

/** Median distance of the built edge from the plan's, by a histogram of hundredths of a pixel. */
function commonSwell(built: Uint8Array, builtDistance: Float32Array, planDistance: Float32Array): number {
  const near = 3;
  const bins = new Int32Array(2 * near * 100 + 1);
  let n = 0;
  for (let i = 0; i < built.length; i++) {
    if (!built[i] || builtDistance[i] < -0.6 || !(Math.abs(planDistance[i]) < near)) continue;
    bins[Math.round((planDistance[i] + near) * 100)]++;
    n++;
  }
  if (!n) return 0;
  let bin = 0;
  for (let seen = bins[0]; seen < n / 2; seen += bins[++bin]);
  // A conductor's outermost pixel centres lie half a pixel inside its edge.
  const median = bin / 100 - near + 0.5;
  return Math.max(-MOST_SWELL_PX, Math.min(MOST_SWELL_PX, median));
}
