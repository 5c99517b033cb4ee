import type { Flap } from '../../card/schema.ts';
import type { Point } from '../../geometry/index.ts';

/**
 * A flap turned about its fold by an angle, seen from straight above: what lies d off the fold is seen d cos(angle) off.
 * @param degrees 0 = opened flat, 180 = closed
 * @returns an SVG matrix in mm of the base
 */
export function turnedAbout({ fold: [a, b] }: Pick<Flap, 'fold'>, degrees: number): string {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const k = Math.cos((degrees * Math.PI) / 180) - 1;
  const off = nx * a[0] + ny * a[1];
  const m = [1 + k * nx * nx, k * nx * ny, k * nx * ny, 1 + k * ny * ny, -k * off * nx, -k * off * ny];
  return `matrix(${m.map((v) => v.toFixed(6)).join(' ')})`;
}

/** Angle at which a place of the flap is seen so far from the fold as a drag has brought it. */
export function angleAt(from: number, to: number): number {
  return (Math.acos(Math.max(-1, Math.min(1, to / (from || 1)))) * 180) / Math.PI;
}

/** How far a place lies off a flap's fold line, towards the flap, mm. */
export function offFold({ fold: [a, b], outline }: Pick<Flap, 'fold' | 'outline'>, p: Point): number {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const side = ([x, y]: Point) => ((x - a[0]) * -(b[1] - a[1]) + (y - a[1]) * (b[0] - a[0])) / length;
  const far = outline.map(side).reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most), 0);
  return side(p) * Math.sign(far || 1);
}
