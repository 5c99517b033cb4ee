import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { components } from '../components.ts';
import type { CopperMask } from '../types.ts';
import { nearMm } from './lines.ts';
import { onSheet, patchRound, pixelAt, type Patch } from './patch.ts';

/** A ribbon of copper over an opening between two strips that face each other. */
export interface Ribbon {
  /** Pixels of the sheet that become copper. */
  pixels: number[];
  /** Its middle, mm. */
  at: Point;
  /** Unit vector from the one mouth to the other. */
  along: Point;
  /** How far the two mouths are apart, and how broad the ribbon is, mm. */
  apartMm: number;
  broadMm: number;
}

/** Copper is seen as one strip or two within this of the tap, mm: what joins farther off is another matter. */
const roundMm = 6;
/** A tap on copper means an opening no farther off than this, mm: farther in it means the copper itself. */
const onCopperMm = 1;
const directions = 16;
/** Tape is no wider, mm: mouths that face each other for longer are the sides of two strips. */
const widestMm = 9;
/** A ribbon between two sides of which the picture shows nothing is so broad, mm. */
const narrowMm = 1.5;
/** Two mouths run apart by so much of their least distance, and by so much in mm, before they face no more. */
const apartBy = { share: 1.6, mm: 0.6 };
/** Rows that do not face each other, or do not look as tapped, before the ribbon ends, mm. */
const frayMm = 0.4;
/** What is nearer to the paper's colour than by this share of the way to the tapped one is paper. */
const paperShare = 0.35;
/** Paper and what was tapped differ by so much, in units of L*, a*, b*, where the picture tells them apart. */
const tells = 2;
const usual = [4, 3, 3] as const;

interface Row {
  /** Where it meets the one strip and the other, and its middle; px of the patch. */
  from: Point;
  to: Point;
  middle: Point;
  length: number;
}

/**
 * The ribbon that closes the opening at a tap: between the two mouths that are nearest to each other there, as far as they face
 * each other; undefined where no two strips do.
 * @param tap mm
 * @param mostMm farthest that the mouths may be apart
 */
export function ribbonAt(
  mask: CopperMask,
  sheet: SquaredSheet,
  tap: Point,
  mostMm: number,
): Ribbon | undefined {
  const patch = patchRound(mask, sheet, tap, widestMm + mostMm);
  const labels = stripsNear(patch, Math.max(roundMm, mostMm));
  const nearest = nearestMouths(patch, labels, mostMm * patch.pxPerMm);
  if (!nearest) return undefined;
  const rows = ribbonOf(patch, labels, nearest);
  const pixels = new Set<number>();
  for (const { from, to, length } of rows) {
    for (let t = -1; t <= length + 1; t += 0.5) {
      const share = t / Math.max(1, length);
      const n = pixelAt(patch, from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
      if (n >= 0) pixels.add(onSheet(patch, n, mask.width));
    }
  }
  const { i0, j0, pxPerMm } = patch;
  const mean = (c: 0 | 1): number => rows.reduce((sum, { middle }) => sum + middle[c], 0) / rows.length;
  return {
    pixels: [...pixels],
    at: [mask.originMm[0] + (i0 + mean(0)) / pxPerMm, mask.originMm[1] + (j0 + mean(1)) / pxPerMm],
    along: nearest.way,
    apartMm: nearest.row.length / pxPerMm,
    broadMm: rows.length / 2 / pxPerMm,
  };
}

/** The strips of a patch, told apart by what is near the tap. */
function stripsNear(patch: Patch, withinMm: number): Int32Array {
  const { copper, width, height, at, pxPerMm } = patch;
  const most = (withinMm * pxPerMm) ** 2;
  const near = copper.map((v, n) => {
    const [dx, dy] = [(n % width) + 0.5 - at[0], Math.floor(n / width) + 0.5 - at[1]];
    return dx * dx + dy * dy <= most ? v : 0;
  });
  return components(near, width, height, 8).labels;
}

interface Mouths {
  row: Row;
  way: Point;
  strips: [number, number];
}

/** Of all openings near a tap the one that is narrowest and nearest: between two strips, or else within one, where the tap lies in it. */
function nearestMouths(patch: Patch, labels: Int32Array, most: number): Mouths | undefined {
  const { at, pxPerMm, copper } = patch;
  const on = pixelAt(patch, ...at);
  const near = (on >= 0 && copper[on] ? onCopperMm : nearMm) * pxPerMm;
  let best: Mouths | undefined;
  let least = Infinity;
  for (let dy = -near; dy <= near; dy += 2) {
    for (let dx = -near; dx <= near; dx += 2) {
      const off = Math.hypot(dx, dy);
      if (off > near) continue;
      const start: Point = [at[0] + dx, at[1] + dy];
      const k = pixelAt(patch, ...start);
      if (k < 0 || copper[k]) continue;
      for (let n = 0; n < directions; n++) {
        const way: Point = [Math.cos((n * Math.PI) / directions), Math.sin((n * Math.PI) / directions)];
        const row = rowAt(patch, start, way, Math.min(most, least));
        if (!row) continue;
        const strips = stripsOf(patch, labels, row, way);
        if (strips.includes(0)) continue;
        const same = strips[0] === strips[1] ? pxPerMm * 2 + 2 * off : 0;
        const cost = row.length + off + same;
        if (cost >= least) continue;
        least = cost;
        best = { row, way, strips };
      }
    }
  }
  return best;
}

/** The open stretch round a place, along a way. */
function rowAt(patch: Patch, start: Point, way: Point, most: number): Row | undefined {
  const end = (sign: 1 | -1): number | undefined => {
    for (let t = 0; t <= most; t += 0.5) {
      const k = pixelAt(patch, start[0] + sign * t * way[0], start[1] + sign * t * way[1]);
      if (k < 0) return undefined;
      if (patch.copper[k]) return t;
    }
    return undefined;
  };
  const [on, back] = [end(1), end(-1)];
  if (on === undefined || back === undefined || on + back > most) return undefined;
  const place = (t: number): Point => [start[0] + t * way[0], start[1] + t * way[1]];
  return { from: place(-back), to: place(on), middle: place((on - back) / 2), length: on + back };
}

function stripsOf(patch: Patch, labels: Int32Array, { from, to }: Row, way: Point): [number, number] {
  const strip = (p: Point, sign: number): number => {
    const k = pixelAt(patch, p[0] + sign * 0.5 * way[0], p[1] + sign * 0.5 * way[1]);
    return k < 0 ? 0 : labels[k] || labels[pixelAt(patch, ...p)] || 0;
  };
  return [strip(from, -1), strip(to, 1)];
}

/** The rows side by side, half a pixel apart, over which two mouths face each other and look as what was tapped. */
function ribbonOf(patch: Patch, labels: Int32Array, mouths: Mouths): Row[] {
  const sides = ([1, -1] as const).map((sign) => facingRows(patch, labels, mouths, sign));
  const broad = (sides[0].length + sides[1].length) / 2;
  const paper = looksPaper(patch);
  const fray = 2 * frayMm * patch.pxPerMm;
  const kept = sides.map((rows) => {
    let last = 0;
    for (let n = 0; n < rows.length && n - last <= fray; n++) if (!paper?.(rows[n])) last = n + 1;
    return rows.slice(0, last);
  });
  if (broad <= widestMm * patch.pxPerMm || paper) return [mouths.row, ...kept.flat()];
  return [mouths.row, ...sides.flatMap((rows) => rows.slice(0, narrowMm * patch.pxPerMm))];
}

function facingRows(patch: Patch, labels: Int32Array, { row, way, strips }: Mouths, sign: 1 | -1): Row[] {
  const aside: Point = [-sign * way[1], sign * way[0]];
  const most = apartBy.share * row.length + apartBy.mm * patch.pxPerMm;
  const rows: Row[] = [];
  let [x, y] = row.middle;
  let failed = 0;
  while (failed <= 2 * frayMm * patch.pxPerMm && rows.length < 4 * widestMm * patch.pxPerMm) {
    [x, y] = [x + 0.5 * aside[0], y + 0.5 * aside[1]];
    const next = rowAbout(patch, [x, y], way, most);
    const same =
      next && stripsOf(patch, labels, next, way).every((strip, n) => strip === strips[n] || strip === 0);
    if (!next || !same) {
      failed++;
      continue;
    }
    failed = 0;
    rows.push(next);
    [x, y] = next.middle;
  }
  return rows;
}

/** The open stretch nearest to a place, along a way. */
function rowAbout(patch: Patch, [x, y]: Point, way: Point, most: number): Row | undefined {
  for (let t = 0; t <= patch.pxPerMm; t += 0.5) {
    for (const s of t ? [t, -t] : [0]) {
      const k = pixelAt(patch, x + s * way[0], y + s * way[1]);
      if (k >= 0 && !patch.copper[k]) return rowAt(patch, [x + s * way[0], y + s * way[1]], way, most);
    }
  }
  return undefined;
}

/** Tells rows of paper from such as look like what was tapped; undefined where the two look alike. */
function looksPaper(patch: Patch): ((row: Row) => boolean) | undefined {
  const { at, pxPerMm, copper, width, height } = patch;
  const tapped: number[] = [];
  const paper: number[] = [];
  for (let n = 0; n < copper.length; n++) {
    const far = Math.hypot((n % width) + 0.5 - at[0], Math.floor(n / width) + 0.5 - at[1]);
    if (far <= 0.4 * pxPerMm && !copper[n]) tapped.push(n);
    if (copper[n] || far < pxPerMm || far > 5 * pxPerMm || n % 3) continue;
    const step = Math.round(0.4 * pxPerMm);
    const [i, j] = [n % width, Math.floor(n / width)];
    const inner = i >= step && j >= step && i < width - step && j < height - step;
    if (inner && [n - step, n + step, n - step * width, n + step * width].every((k) => !copper[k]))
      paper.push(n);
  }
  if (tapped.length < 4 || paper.length < 40) return undefined;
  const [own, round] = [middleLab(patch, tapped), middleLab(patch, paper)];
  const whole = apart(own, round);
  if (whole < tells) return undefined;
  return ({ from, to, length }) => {
    const along = Array.from({ length: Math.max(1, Math.floor(length)) }, (_, n) => {
      const share = (n + 0.5) / Math.max(1, Math.floor(length));
      return pixelAt(patch, from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
    });
    return (
      apart(
        middleLab(
          patch,
          along.filter((n) => n >= 0),
        ),
        round,
      ) <
      paperShare * whole
    );
  };
}

const middleLab = ({ lab }: Patch, pixels: readonly number[]): number[] =>
  lab.map((plane) => {
    const sorted = pixels.map((n) => plane[n]).sort((a, b) => a - b);
    return sorted[sorted.length >> 1] ?? 0;
  });

const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.hypot(...a.map((v, c) => (v - b[c]) / usual[c]));
