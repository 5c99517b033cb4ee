import type { Point } from '../../geometry/index.ts';

export interface Circle {
  at: Point;
  radius: number;
}

/**
 * The circle through points of which some belong to something else: least squares on x2 + y2 + ax + by + c, reweighted
 * so that what lies farther off than `tolerance` counts nothing in the end.
 * @source I. Kasa, A circle fitting procedure and its error analysis, 1976; J. W. Tukey's biweight (from memory)
 */
export function fitCircle(points: Point[], first: Circle, tolerance: number): Circle | undefined {
  let circle = first;
  for (const reach of [4, 3, 2, 1.5, 1, 1, 1]) {
    const near = points.flatMap(([x, y]) => {
      const off = (Math.hypot(x - circle.at[0], y - circle.at[1]) - circle.radius) / (reach * tolerance);
      return Math.abs(off) < 1 ? [{ x: x - circle.at[0], y: y - circle.at[1], w: (1 - off * off) ** 2 }] : [];
    });
    const shift = near.length < 12 ? undefined : leastSquares(near);
    if (!shift) return undefined;
    circle = { at: [circle.at[0] + shift.at[0], circle.at[1] + shift.at[1]], radius: shift.radius };
  }
  return circle;
}

function leastSquares(points: { x: number; y: number; w: number }[]): Circle | undefined {
  let [n, x, y, xx, xy, yy, xz, yz, z] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const p of points) {
    const s = p.x * p.x + p.y * p.y;
    n += p.w;
    x += p.w * p.x;
    y += p.w * p.y;
    z += p.w * s;
    xx += p.w * p.x * p.x;
    xy += p.w * p.x * p.y;
    yy += p.w * p.y * p.y;
    xz += p.w * p.x * s;
    yz += p.w * p.y * s;
  }
  // About the means, so that two unknowns are left.
  const [a, b, c] = [xx - (x * x) / n, xy - (x * y) / n, yy - (y * y) / n];
  const [u, v] = [xz - (x * z) / n, yz - (y * z) / n];
  const det = a * c - b * b;
  if (!(det > 1e-9)) return undefined;
  const at: Point = [(c * u - b * v) / (2 * det), (a * v - b * u) / (2 * det)];
  const square = z / n - (2 * (at[0] * x + at[1] * y)) / n + at[0] * at[0] + at[1] * at[1];
  return square > 0 ? { at, radius: Math.sqrt(square) } : undefined;
}
