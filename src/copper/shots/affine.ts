import type { Shift } from './blockShifts.ts';

/** x' = x + a + b x + c y, y' = y + d + e x + f y: how one picture lies over another, px. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export interface Fit {
  affine: Affine;
  /** Median distance of the kept blocks from the fit, px, and how many were kept. */
  residual: number;
  kept: number;
}

/**
 * Least-squares affine map through block displacements; blocks far off it are dropped, five rounds. With few blocks only
 * the shift is fitted.
 */
export function fitAffine(shifts: readonly Shift[]): Fit | undefined {
  let kept = [...shifts];
  for (let round = 0; round < 5; round++) {
    if (kept.length < 4) return undefined;
    const affine = solve(kept);
    const distances = kept.map((shift) => distance(affine, shift));
    const middle = [...distances].sort((p, q) => p - q)[distances.length >> 1];
    const next = kept.filter((_, n) => distances[n] <= Math.max(0.3, 2.5 * middle));
    if (next.length === kept.length || round === 4) return { affine, residual: middle, kept: kept.length };
    kept = next;
  }
  return undefined;
}

const distance = ([a, b, c, d, e, f]: Affine, { x, y, dx, dy }: Shift): number =>
  Math.hypot(a + b * x + c * y - dx, d + e * x + f * y - dy);

function solve(shifts: readonly Shift[]): Affine {
  const n = shifts.length;
  const mean = (pick: (shift: Shift) => number): number => shifts.reduce((sum, s) => sum + pick(s), 0) / n;
  const [mx, my] = [mean((s) => s.x), mean((s) => s.y)];
  const [mu, mv] = [mean((s) => s.dx), mean((s) => s.dy)];
  const of = (pick: (x: number, y: number, s: Shift) => number): number =>
    shifts.reduce((sum, s) => sum + pick(s.x - mx, s.y - my, s), 0);
  const [xx, yy, xy] = [of((x) => x * x), of((_, y) => y * y), of((x, y) => x * y)];
  const det = xx * yy - xy * xy;
  if (n < 8 || det < 1e-3 * xx * yy) return [mu, 0, 0, mv, 0, 0];
  const slope = (xw: number, yw: number): [number, number] => [
    (xw * yy - yw * xy) / det,
    (yw * xx - xw * xy) / det,
  ];
  const [b, c] = slope(
    of((x, _, s) => x * s.dx),
    of((_, y, s) => y * s.dx),
  );
  const [e, f] = slope(
    of((x, _, s) => x * s.dy),
    of((_, y, s) => y * s.dy),
  );
  return [mu - b * mx - c * my, b, c, mv - e * mx - f * my, e, f];
}
