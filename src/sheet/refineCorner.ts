import type { Point } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';

/** A corner set by hand is moved at most this many photo px by itself. */
const reachPx = 14;
const half = 16;

/**
 * Snaps a corner that was dragged near its place to the picture: where the edge lines round it meet.
 * Every pixel's gradient says "the corner lies on the line through me along my edge"; the least-squares meeting
 * point of those lines is the corner.
 * @param near px, upright picture
 * @returns the corner, sub-pixel; `near` itself where nothing like a corner is within reach
 * @source W. Foerstner, E. Guelch, A fast operator for detection and precise location of distinct points, 1987
 */
export function refineCorner(photo: Photo, near: Point): Point {
  let at = near;
  for (let round = 0; round < 8; round++) {
    const next = meetingPoint(photo, at, round < 3 ? half : half / 2);
    if (!next) return near;
    const moved = Math.hypot(next[0] - at[0], next[1] - at[1]);
    at = next;
    if (Math.hypot(at[0] - near[0], at[1] - near[1]) > reachPx) return near;
    if (moved < 0.02) break;
  }
  return at;
}

function meetingPoint({ rgba, width, height }: Photo, at: Point, r: number): Point | undefined {
  const cx = Math.round(at[0] - 0.5);
  const cy = Math.round(at[1] - 0.5);
  if (cx < r + 1 || cy < r + 1 || cx >= width - r - 1 || cy >= height - r - 1) return undefined;
  let a = 0;
  let b = 0;
  let c = 0;
  let u = 0;
  let v = 0;
  for (let y = cy - r; y <= cy + r; y++) {
    for (let x = cx - r; x <= cx + r; x++) {
      const d2 = ((x + 0.5 - at[0]) ** 2 + (y + 0.5 - at[1]) ** 2) / (r * r);
      if (d2 >= 1) continue;
      const p = (y * width + x) * 4;
      for (let k = 0; k < 3; k++) {
        const gx = rgba[p + 4 + k] - rgba[p - 4 + k];
        const gy = rgba[p + 4 * width + k] - rgba[p - 4 * width + k];
        const w = 1 - d2;
        a += w * gx * gx;
        b += w * gx * gy;
        c += w * gy * gy;
        u += w * gx * (gx * (x + 0.5) + gy * (y + 0.5));
        v += w * gy * (gx * (x + 0.5) + gy * (y + 0.5));
      }
    }
  }
  const det = a * c - b * b;
  // Round corners have both directions of edge; along a single straight edge the determinant vanishes.
  if (det < 0.02 * (a + c) ** 2 || a + c < 40 * r * r) return undefined;
  return [(c * u - b * v) / det, (a * v - b * u) / det];
}
