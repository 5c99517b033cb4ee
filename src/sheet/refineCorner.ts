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

/** Gradients under this (levels over two px) are noise; so are those under a share of the strongest one near. */
const leastGradient = 24;
const leastShare = 0.25;

function meetingPoint({ rgba, width, height }: Photo, at: Point, r: number): Point | undefined {
  const cx = Math.round(at[0] - 0.5);
  const cy = Math.round(at[1] - 0.5);
  if (cx < r + 1 || cy < r + 1 || cx >= width - r - 1 || cy >= height - r - 1) return undefined;
  const light = (x: number, y: number) => {
    const p = (y * width + x) * 4;
    return (rgba[p] + 2 * rgba[p + 1] + rgba[p + 2]) / 4;
  };
  // Scharr's weights: a plain difference misjudges the direction of slanting edges by some degrees.
  const gradient = (x: number, y: number) => {
    const [a, b, c] = [light(x - 1, y - 1), light(x, y - 1), light(x + 1, y - 1)];
    const [d, e] = [light(x - 1, y), light(x + 1, y)];
    const [f, g, h] = [light(x - 1, y + 1), light(x, y + 1), light(x + 1, y + 1)];
    return [(3 * (c - a + h - f) + 10 * (e - d)) / 16, (3 * (f - a + h - c) + 10 * (g - b)) / 16];
  };
  let strongest = 0;
  for (let y = cy - r; y <= cy + r; y++)
    for (let x = cx - r; x <= cx + r; x++) strongest = Math.max(strongest, Math.hypot(...gradient(x, y)));
  if (strongest < leastGradient) return undefined;
  let a = 0;
  let b = 0;
  let c = 0;
  let u = 0;
  let v = 0;
  for (let y = cy - r; y <= cy + r; y++) {
    for (let x = cx - r; x <= cx + r; x++) {
      const d2 = ((x + 0.5 - at[0]) ** 2 + (y + 0.5 - at[1]) ** 2) / (r * r);
      const [gx, gy] = gradient(x, y);
      if (d2 >= 1 || Math.hypot(gx, gy) < leastShare * strongest) continue;
      const w = 1 - d2;
      a += w * gx * gx;
      b += w * gx * gy;
      c += w * gy * gy;
      u += w * gx * (gx * (x + 0.5) + gy * (y + 0.5));
      v += w * gy * (gx * (x + 0.5) + gy * (y + 0.5));
    }
  }
  const det = a * c - b * b;
  // Round a corner there are edges in two directions; along a single straight edge the determinant vanishes.
  if (det < 0.02 * (a + c) ** 2) return undefined;
  return [(c * u - b * v) / det, (a * v - b * u) / det];
}
