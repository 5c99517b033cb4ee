import type { Point } from '../geometry/index.ts';

/** One-term radial distortion about the picture's centre: x_d = x (1 + k1 r^2), r in half-diagonals. */
export interface Lens {
  k1: number;
  centre: Point;
  /** Half the picture's diagonal, px. */
  half: number;
}

export function lensOf(photo: { width: number; height: number }, k1: number): Lens {
  const centre: Point = [photo.width / 2, photo.height / 2];
  return { k1, centre, half: Math.hypot(centre[0], centre[1]) };
}

/** Straight-line picture px to the px where the lens put it. */
export function distort(lens: Lens, [x, y]: Point): Point {
  const dx = x - lens.centre[0];
  const dy = y - lens.centre[1];
  const s = 1 + (lens.k1 * (dx * dx + dy * dy)) / (lens.half * lens.half);
  return [lens.centre[0] + dx * s, lens.centre[1] + dy * s];
}

/** The inverse of `distort`, by fixed-point iteration (|k1| < 0.1 converges to 1e-6 px in eight steps). */
export function undistort(lens: Lens, [x, y]: Point): Point {
  if (lens.k1 === 0) return [x, y];
  const dx = x - lens.centre[0];
  const dy = y - lens.centre[1];
  let s = 1;
  for (let i = 0; i < 8; i++) {
    s = 1 + (lens.k1 * (dx * dx + dy * dy)) / (s * s * lens.half * lens.half);
  }
  return [lens.centre[0] + dx / s, lens.centre[1] + dy / s];
}
