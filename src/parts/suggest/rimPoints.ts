import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { Circle } from './fitCircle.ts';

/** Rays from the middle, and along each the places looked at, mm. */
const rays = 180;
const stepMm = 0.1;
/** Each side of an edge is a mean over this many steps. */
const depth = 4;
/** Levels across an edge that is one. */
const leastStep = 10;

/** A place on the rim as one ray sees it. */
export interface RimPoint {
  at: Point;
  ray: number;
}

/**
 * The strongest edges across rays from a circle's middle, between shares of its radius.
 * @param most edges a ray: one for the rim itself, more where a shadow or a bevel may be stronger
 */
export function rimPoints(
  sheet: SquaredSheet,
  { at, radius }: Circle,
  { from = 0.8, to = 1.25, most = 1 } = {},
): RimPoint[] {
  const found: RimPoint[] = [];
  const count = Math.ceil((radius * (to - from)) / stepMm) + 2 * depth;
  const colours = new Float64Array(3 * count);
  for (let ray = 0; ray < rays; ray++) {
    const angle = (2 * Math.PI * ray) / rays;
    const place = (n: number): Point => {
      const r = from * radius + (n - depth) * stepMm;
      return [at[0] + r * Math.cos(angle), at[1] + r * Math.sin(angle)];
    };
    const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
    for (let n = 0; n < count; n++) {
      const r = from * radius + (n - depth) * stepMm;
      readAt(sheet, at[0] + r * ux, at[1] + r * uy, colours, 3 * n);
    }
    for (const n of strongest(colours, most)) found.push({ at: place(n - 0.5), ray });
  }
  return found;
}

export const rimRays = rays;

type Colour = readonly [number, number, number];

/** Indices of the strongest steps of a profile of colours, none within `depth` of a stronger one. */
function strongest(colours: Float64Array, most: number): number[] {
  const steps = new Float64Array(colours.length / 3 - depth + 1);
  for (let n = depth; n < steps.length; n++) steps[n] = stepAt(colours, n);
  const kept: number[] = [];
  while (kept.length < most) {
    let best = -1;
    for (let n = depth; n < steps.length; n++) {
      if (steps[n] < leastStep || (best >= 0 && steps[n] <= steps[best])) continue;
      if (kept.every((k) => Math.abs(k - n) > depth)) best = n;
    }
    if (best < 0) break;
    kept.push(best);
  }
  return kept;
}

/** Difference of the means on both sides of the border before place n, levels; 0 where one lies off the sheet. */
function stepAt(colours: Float64Array, n: number): number {
  let sum = 0;
  for (let c = 0; c < 3; c++) {
    let difference = 0;
    for (let k = 1; k <= depth; k++)
      difference += (colours[3 * (n + k - 1) + c] - colours[3 * (n - k) + c]) / depth;
    sum += difference * difference;
  }
  return Math.sqrt(sum) || 0;
}

/** Writes the colour at a place of the sheet, mm; off the sheet no number. */
function readAt(
  { rgb, width, height, pxPerMm, originMm }: SquaredSheet,
  x: number,
  y: number,
  into: Float64Array,
  at: number,
): void {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  const inside = i >= 0 && j >= 0 && i < width && j < height;
  const p = (j * width + i) * 3;
  for (let c = 0; c < 3; c++) into[at + c] = inside ? rgb[p + c] : NaN;
}

function colourAt(
  { rgb, width, height, pxPerMm, originMm }: SquaredSheet,
  [x, y]: Point,
): Colour | undefined {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return undefined;
  const p = (j * width + i) * 3;
  return [rgb[p], rgb[p + 1], rgb[p + 2]];
}

/** Mean colour along a ray between two distances from its beginning, mm; undefined off the sheet. */
export function meanAlong(
  sheet: SquaredSheet,
  [x, y]: Point,
  angle: number,
  from: number,
  to: number,
): Colour | undefined {
  const sum: [number, number, number] = [0, 0, 0];
  const count = Math.max(1, Math.round((to - from) / stepMm));
  for (let n = 0; n < count; n++) {
    const r = from + ((n + 0.5) * (to - from)) / count;
    const own = colourAt(sheet, [x + r * Math.cos(angle), y + r * Math.sin(angle)]);
    if (!own) return undefined;
    for (let c = 0; c < 3; c++) sum[c] += own[c] / count;
  }
  return sum;
}
