import type { Point, Quad } from '../../geometry/index.ts';
import { homographyFromQuad } from '../homography.ts';

/** Focal lengths of phone cameras, in long sides of the picture: wide, usual, portrait. From memory. */
const focals = [0.5, 0.6, 0.7, 0.77, 0.85, 1, 1.25, 1.6];

/**
 * How well a quadrilateral can be the image of a rectangle of known size through an ordinary camera (square pixels,
 * centred axis): 0 = exactly, 0.05 = a side is off by some 5 %.
 * @param corners px, in the order (0,0) (w,0) (w,h) (0,h)
 * @param centre of the picture and long side, px
 * @source the two constraints on the columns of H: Z. Zhang, A flexible new technique for camera calibration, PAMI 22 (2000)
 */
export function poseMisfit(
  corners: Quad,
  size: { width: number; height: number },
  centre: Point,
  longSide: number,
): { misfit: number; focal: number } {
  const local = corners.map(([x, y]) => [
    (x - centre[0]) / longSide,
    (y - centre[1]) / longSide,
  ]) as unknown as Quad;
  const m = homographyFromQuad(local, size);
  let best = { misfit: Infinity, focal: 1 };
  for (const f of focals) {
    const a = [m[0] / f, m[3] / f, m[6]];
    const b = [m[1] / f, m[4] / f, m[7]];
    const la = Math.hypot(a[0], a[1], a[2]);
    const lb = Math.hypot(b[0], b[1], b[2]);
    const skew = (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / (la * lb);
    const misfit = Math.hypot(Math.log(la / lb), skew);
    if (misfit < best.misfit) best = { misfit, focal: f };
  }
  return best;
}

/** Ratio of the sides 0-1 to 1-2 of the rectangle whose image this is, for a usual phone camera. */
export function aspectSeen(corners: Quad, centre: Point, longSide: number): number {
  const f = 0.77;
  const local = corners.map(([x, y]) => [
    (x - centre[0]) / longSide,
    (y - centre[1]) / longSide,
  ]) as unknown as Quad;
  const m = homographyFromQuad(local, { width: 1, height: 1 });
  return Math.hypot(m[0] / f, m[3] / f, m[6]) / Math.hypot(m[1] / f, m[4] / f, m[7]);
}
