import type { Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import type { Bow } from '../bow.ts';
import { distort, lensOf, undistort } from '../lens.ts';
import { fitLine, meetLines } from './fitLine.ts';
import type { FittedLine } from './fitLine.ts';
import { lookAcross } from './profiles.ts';
import type { EdgePoint } from './profiles.ts';

/** A quadrilateral fitted to the photograph itself. */
export interface FittedSides {
  cornersPx: Quad;
  k1: number;
  /** Share of each side's length on which its edge is seen where the line says, 0..1. */
  seen: readonly [number, number, number, number];
  /** The same of the last fifth towards each end of each side, where the corners are: the least, and the mean. */
  ends: readonly [least: number, mean: number];
  /** Median colour step across each side where seen, levels. */
  steps: readonly [number, number, number, number];
  /** 95th percentile distance of the seen edges from the lines, px. */
  residualPx: number;
  /** At which shares of each side's length its edge is seen. */
  seenAt: readonly (readonly number[])[];
  /** How the sides bow; absent where they are straight. */
  bow?: Bow;
}

export const profiles = 140;

/**
 * Fits the four sides to the picture's own pixels: profiles across each side, a robust line each, and one lens term
 * common to all when that makes bowed edges straight. Done twice, the second time nearer.
 * @param quad photo px, clockwise as seen, within about `reach` of the truth
 * @param pxPerMm of the photograph on the base, about
 * @returns undefined when a side has no edge to fit
 */
export function fitSides(photo: Photo, quad: Quad, reach: number, pxPerMm: number): FittedSides | undefined {
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  let corners = quad;
  let k1 = 0;
  let last: FittedSides | undefined;
  for (const look of [reach, Math.max(4, Math.ceil(reach / 2))]) {
    const plan = { count: profiles, reach: Math.ceil(look), depth };
    const points = [0, 1, 2, 3].map((side) => lookAcross(photo, corners, side, lensOf(photo, k1), plan));
    const fitted = fitLens(photo, points, Math.max(1.2, 0.12 * pxPerMm));
    if (!fitted) return undefined;
    corners = fitted.corners;
    k1 = fitted.k1;
    last = describe(photo, points, fitted, Math.max(1.2, 0.15 * pxPerMm));
  }
  return last;
}

interface LensFit {
  k1: number;
  lines: FittedLine[];
  corners: Quad;
  cost: number;
}

/** Distortion is taken only where it makes the sides straighter by a fifth; phones lie within +-0.06. */
function fitLens(photo: Photo, points: EdgePoint[][], tolerance: number): LensFit | undefined {
  const plain = linesAt(photo, points, 0, tolerance);
  if (!plain) return undefined;
  let best = plain;
  for (let step = 0.016; step > 0.0015; step /= 2) {
    for (;;) {
      const tries = [best.k1 - step, best.k1 + step]
        .filter((k) => Math.abs(k) <= 0.065)
        .map((k) => linesAt(photo, points, k, tolerance))
        .filter((fit) => fit !== undefined && fit.cost < best.cost);
      if (tries.length === 0) break;
      best = tries.reduce((a, b) => (b!.cost < a!.cost ? b : a))!;
    }
  }
  return best.cost < 0.8 * plain.cost ? best : plain;
}

function linesAt(photo: Photo, points: EdgePoint[][], k1: number, tolerance: number): LensFit | undefined {
  const lens = lensOf(photo, k1);
  const lines: FittedLine[] = [];
  let cost = 0;
  let count = 0;
  for (const side of points) {
    const straight = side.map((p) => undistort(lens, p.at));
    const line = fitLine(straight, tolerance);
    if (!line) return undefined;
    lines.push(line);
    for (const [x, y] of straight) {
      const d = Math.min(1, Math.abs(line.nx * x + line.ny * y - line.rho) / (1.5 * tolerance));
      cost += d * d;
      count++;
    }
  }
  const corners = [3, 0, 1, 2].map((i) =>
    distort(lens, meetLines(lines[i], lines[(i + 1) % 4])),
  ) as unknown as Quad;
  return { k1, lines, corners, cost: cost / Math.max(1, count) };
}

function describe(photo: Photo, points: EdgePoint[][], fit: LensFit, near: number): FittedSides {
  const lens = lensOf(photo, fit.k1);
  const distances: number[] = [];
  const seen: number[] = [];
  const steps: number[] = [];
  const ends: number[] = [];
  const seenAt: number[][] = [];
  points.forEach((side, i) => {
    const { nx, ny, rho } = fit.lines[i];
    const on = side.filter((p) => {
      const [x, y] = undistort(lens, p.at);
      const d = Math.abs(nx * x + ny * y - rho);
      if (d < 3 * near) distances.push(d);
      return d < near;
    });
    seenAt.push(on.map(({ along }) => along));
    seen.push(on.length / profiles);
    ends.push(...endsSeen(seenAt[i]));
    steps.push(median(on.map((p) => p.step)));
  });
  distances.sort((a, b) => a - b);
  return {
    cornersPx: fit.corners,
    k1: fit.k1,
    seen: seen as unknown as FittedSides['seen'],
    ends: leastAndMean(ends),
    steps: steps as unknown as FittedSides['steps'],
    seenAt,
    residualPx: distances[Math.floor(0.95 * (distances.length - 1))] ?? Infinity,
  };
}

/** Profiles begin a twentieth from each end. */
const inAnEnd = profiles * (0.15 / 0.9);

/** Share of the profiles of the first and of the last fifth of a side on which its edge was seen, at shares `at` of its length. */
export function endsSeen(at: number[]): [number, number] {
  const first = at.filter((t) => t < 0.2).length;
  const last = at.filter((t) => t > 0.8).length;
  return [Math.min(1, first / inAnEnd), Math.min(1, last / inAnEnd)];
}

export function leastAndMean(shares: number[]): [number, number] {
  return [Math.min(...shares), shares.reduce((s, v) => s + v, 0) / shares.length];
}

function median(values: number[]): number {
  if (values.length === 0) return 0;
  return values.sort((a, b) => a - b)[values.length >> 1];
}
