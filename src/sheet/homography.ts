import type { Homography, Point, Quad } from '../geometry/index.ts';

/**
 * The projective map of the unit square (0,0) (1,0) (1,1) (0,1) to a quadrilateral.
 * @source P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, section 2.2.3 (from memory for the section)
 */
export function homographyFromUnitSquare([p0, p1, p2, p3]: Quad): Homography {
  const dx1 = p1[0] - p2[0];
  const dx2 = p3[0] - p2[0];
  const dy1 = p1[1] - p2[1];
  const dy2 = p3[1] - p2[1];
  const sx = p0[0] - p1[0] + p2[0] - p3[0];
  const sy = p0[1] - p1[1] + p2[1] - p3[1];
  const det = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  return [
    p1[0] - p0[0] + g * p1[0],
    p3[0] - p0[0] + h * p3[0],
    p0[0],
    p1[1] - p0[1] + g * p1[1],
    p3[1] - p0[1] + h * p3[1],
    p0[1],
    g,
    h,
    1,
  ];
}

/**
 * The map that takes mm on the base to picture pixels.
 * @param corners where (0,0), (w,0), (w,h), (0,h) lie, px
 * @param size of the base, mm
 */
export function homographyFromQuad(corners: Quad, size: { width: number; height: number }): Homography {
  const [a, b, c, d, e, f, g, h, i] = homographyFromUnitSquare(corners);
  const { width: w, height: t } = size;
  return [a / w, b / t, c, d / w, e / t, f, g / w, h / t, i];
}

export function applyHomography(m: Homography, [x, y]: Point): Point {
  const w = m[6] * x + m[7] * y + m[8];
  return [(m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w];
}

/** Inverse by the adjugate, scaled so that the last element is 1. */
export function invertHomography([a, b, c, d, e, f, g, h, i]: Homography): Homography {
  const scale = 1 / (a * e - b * d);
  return [
    (e * i - f * h) * scale,
    (c * h - b * i) * scale,
    (b * f - c * e) * scale,
    (f * g - d * i) * scale,
    (a * i - c * g) * scale,
    (c * d - a * f) * scale,
    (d * h - e * g) * scale,
    (b * g - a * h) * scale,
    1,
  ];
}

/** The map that does `first`, then `then`. */
export function composeHomographies(then: Homography, first: Homography): Homography {
  const m = Array.from({ length: 9 }, (_, n) => {
    const row = Math.floor(n / 3) * 3;
    const column = n % 3;
    return then[row] * first[column] + then[row + 1] * first[column + 3] + then[row + 2] * first[column + 6];
  });
  return m.map((v) => v / m[8]) as unknown as Homography;
}

/**
 * The same quadrilateral begun `turns` corners further on: the sheet read after as many quarter turns.
 * @param turns whole number, may be negative
 */
export function turnCorners(quad: Quad, turns: number): Quad {
  const at = (i: number) => quad[(((i + turns) % 4) + 4) % 4];
  return [at(0), at(1), at(2), at(3)];
}

/**
 * Length scale of a map at a place: square root of its Jacobian's determinant, px per mm.
 * @param m mm to px
 */
export function scaleAt(m: Homography, [x, y]: Point): number {
  const w = m[6] * x + m[7] * y + m[8];
  const det =
    m[0] * (m[4] * m[8] - m[5] * m[7]) -
    m[1] * (m[3] * m[8] - m[5] * m[6]) +
    m[2] * (m[3] * m[7] - m[4] * m[6]);
  return Math.sqrt(Math.abs(det / (w * w * w)));
}
