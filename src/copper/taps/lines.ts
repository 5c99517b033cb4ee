import type { Point } from '../../geometry/index.ts';
import { pixelAt, type Patch } from './patch.ts';

/** A straight way right across the copper near a tap. */
export interface Across {
  /** Its two ends, where the mask is open; px of the patch. */
  from: Point;
  to: Point;
  /** Unit vectors along it and at a right angle to it. */
  way: Point;
  normal: Point;
  /** px. */
  length: number;
  /** Its direction, radians. */
  angle: number;
  /** How far the tap is from its copper, px. */
  off: number;
}

/** Directions that are tried first, and a line's distances from the tap, in steps, mm; then finer ones about the best. */
const directions = 16;
const stepMm = 0.2;
/** A line passes within this of the tap, mm: a finger is so sure of the place. */
export const nearMm = 1.5;
/** No strip is wider, nor a slit across it longer, mm. */
export const longestMm = 13;
/** An opening of the mask that a line passes over without having come out of the strip, mm. */
const overMm = 0.35;
/** Copper so near on both sides of a line, mm: it runs in a slit that the mask has open there. */
const slitMm = 1.2;

/** Straight ways across the copper in all directions that pass near the tap. */
export function linesAcross(patch: Patch): Across[] {
  const found: Across[] = [];
  const steps = Math.round(nearMm / stepMm);
  for (let n = 0; n < directions; n++)
    for (let d = -steps; d <= steps; d++)
      found.push(...lineAt(patch, (n * Math.PI) / directions, d * stepMm));
  return found;
}

/** The lines about one of them: turned about its middle and moved aside by a share of a step. */
export function linesAbout(patch: Patch, { angle, from, to }: Across, share: number): Across[] {
  const [x, y] = [0, 1].map((c) => (from[c] + to[c]) / 2 - patch.at[c]);
  return [-share, 0, share].flatMap((turn) => {
    const turned = angle + (turn * Math.PI) / directions;
    const aside = (y * Math.cos(turned) - x * Math.sin(turned)) / patch.pxPerMm;
    return [-share, 0, share].flatMap((d) => lineAt(patch, turned, aside + d * stepMm));
  });
}

function lineAt(patch: Patch, angle: number, aside: number): Across[] {
  const { at, pxPerMm } = patch;
  const way: Point = [Math.cos(angle), Math.sin(angle)];
  const normal: Point = [-way[1], way[0]];
  const d = aside * pxPerMm;
  const line = chord(patch, [at[0] + d * normal[0], at[1] + d * normal[1]], way);
  return line ? [{ ...line, way, normal, angle, off: Math.hypot(d, line.along) }] : [];
}

/** The stretch of copper on a line that its foot lies in, or the nearest to it, with the slit that it goes on in. */
function chord(patch: Patch, foot: Point, way: Point): Chord | undefined {
  const near = nearMm * patch.pxPerMm;
  const copperAt = (t: number): boolean => isCopper(patch, foot[0] + t * way[0], foot[1] + t * way[1]);
  let start: number | undefined;
  for (let t = 0; t <= near && start === undefined; t += 0.5) {
    if (copperAt(t)) start = t;
    else if (copperAt(-t)) start = -t;
  }
  if (start === undefined) return undefined;
  const inSlit = (t: number): boolean =>
    copperAt(t) || isSlit(patch, foot[0] + t * way[0], foot[1] + t * way[1], way);
  const ends = endsOf(patch, inSlit, copperAt, start) ?? endsOf(patch, copperAt, copperAt, start);
  if (!ends) return undefined;
  const [from, to] = ends;
  const place = (t: number): Point => [foot[0] + t * way[0], foot[1] + t * way[1]];
  return { from: place(from), to: place(to), length: to - from, along: Math.abs(start) };
}

type Chord = Pick<Across, 'from' | 'to' | 'length'> & { along: number };

/** Whether copper lies at a place; beyond the patch it may. */
export function isCopper(patch: Patch, x: number, y: number): boolean {
  const k = pixelAt(patch, x, y);
  return k < 0 || patch.copper[k] === 1;
}

/** Whether copper lies near on both sides of a line that runs through a place. */
export function isSlit(patch: Patch, x: number, y: number, way: Point): boolean {
  return [-1, 1].every((sign) => {
    for (let s = 1; s <= slitMm * patch.pxPerMm; s++)
      if (isCopper(patch, x - sign * s * way[1], y + sign * s * way[0])) return true;
    return false;
  });
}

function endsOf(
  { pxPerMm }: Patch,
  inside: (t: number) => boolean,
  copperAt: (t: number) => boolean,
  start: number,
): [number, number] | undefined {
  const most = longestMm * pxPerMm;
  const to = endOf(inside, copperAt, start, 1, most, overMm * pxPerMm);
  const from = endOf(inside, copperAt, start, -1, most, overMm * pxPerMm);
  return from !== undefined && to !== undefined && to - from <= most ? [from, to] : undefined;
}

/** Where the copper ends on a line for good; undefined where it goes on for more than a strip's width. */
function endOf(
  inside: (t: number) => boolean,
  copperAt: (t: number) => boolean,
  start: number,
  sign: 1 | -1,
  most: number,
  over: number,
): number | undefined {
  let [last, copper] = [0, 0];
  for (let t = 0; t <= most; t += 0.5) {
    if (inside(start + sign * t)) last = t;
    else if (t - last > over) return start + sign * copper;
    if (copperAt(start + sign * t)) copper = t;
  }
  return undefined;
}
