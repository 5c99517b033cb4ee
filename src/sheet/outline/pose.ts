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
  const m = homographyFromQuad(fromCentre(corners, centre, longSide), size);
  const squares = [m[0] * m[0] + m[3] * m[3], m[1] * m[1] + m[4] * m[4], m[0] * m[1] + m[3] * m[4]];
  let best = { misfit: Infinity, focal: 1 };
  for (const f of focals) {
    const aa = squares[0] / (f * f) + m[6] * m[6];
    const bb = squares[1] / (f * f) + m[7] * m[7];
    const skew = (squares[2] / (f * f) + m[6] * m[7]) / Math.sqrt(aa * bb);
    const ratio = Math.log(aa / bb) / 2;
    const misfit = Math.sqrt(ratio * ratio + skew * skew);
    if (misfit < best.misfit) best = { misfit, focal: f };
  }
  return best;
}

function fromCentre([a, b, c, d]: Quad, [x, y]: Point, unit: number): Quad {
  return [
    [(a[0] - x) / unit, (a[1] - y) / unit],
    [(b[0] - x) / unit, (b[1] - y) / unit],
    [(c[0] - x) / unit, (c[1] - y) / unit],
    [(d[0] - x) / unit, (d[1] - y) / unit],
  ];
}
