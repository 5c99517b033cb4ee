import type { Point, Segment } from './types.ts';

/**
 * Reflection about the line through two places: what closing a flap does to its copper.
 * @returns p - 2 n (n . (p - a)), n being the line's unit normal (Householder 1958)
 */
export function mirrorAbout([a, b]: Segment): (p: Point) => Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const nx = -(b[1] - a[1]) / length;
  const ny = (b[0] - a[0]) / length;
  return (p) => {
    const off = 2 * (nx * (p[0] - a[0]) + ny * (p[1] - a[1]));
    return [p[0] - off * nx, p[1] - off * ny];
  };
}
