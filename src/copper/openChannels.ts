import { middleOf, type Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { components, membersOf } from './components.ts';
import { grow } from './grow.ts';
import { boxRound, labAt, paperRound } from './paperRound.ts';
import type { CopperMask } from './types.ts';

/**
 * Likelihood, 0..255, from which copper is sure, and the median under which what lies between is doubted: foil laid there
 * gives over 200 on drawn builds, paper that takes on its neighbours' light 60 to 145 on path-traced photographs.
 */
const sure = 170;
const doubted = 150;
/** Median that the copper round it must have: in a strip that is doubtful itself nothing is told. */
const sureRound = 185;
const roundMm = 1.5;
/** How far a strip's own soft border reaches, mm. */
const rimMm = 0.2;
/** Copper that goes on behind a contact for so much, mm, lies there with its side: no tape is wider nor cut narrower. */
const sideMm = [1.8, 8];
/** A doubtful slit narrower than this, mm, is a dull fold or facet across one strip, not paper between two. */
const narrowestMm = 0.6;
/** Pairs of contacts that are asked, at most. */
const most = 40;

/**
 * Opens doubtful copper between the sides of two sure strips. Paper in the channel between strips takes on their warm
 * light, and beside a lamp its shade, so that it half passes for copper; a glare lies along its strip and joins ends.
 * What is as dark and of the same colour as the strips is foil laid across, however doubtful.
 * @param lamps places on or beside a lamp: in its shade paper is as dark as foil
 */
export function openChannels(
  mask: CopperMask,
  sheet: SquaredSheet,
  lamps: (x: number, y: number) => boolean,
): CopperMask {
  if (mask.by !== 'learned') return mask;
  const { width, height, pxPerMm, likelihood } = mask;
  const certain = new Uint8Array(width * height);
  for (let k = 0; k < certain.length; k++) if (mask.filled[k] && likelihood[k] >= sure) certain[k] = 1;
  const strips = grow(certain, width, height, rimMm * pxPerMm);
  const doubtful = new Uint8Array(width * height);
  for (let k = 0; k < doubtful.length; k++) {
    strips[k] &= mask.filled[k];
    if (mask.filled[k] && !strips[k]) doubtful[k] = 1;
  }
  const filled = mask.filled.slice();
  const strict = mask.strict.slice();
  for (const channel of membersOf(components(doubtful, width, height, 8))) {
    if (channel.length < 4) continue;
    if (medianOf(channel, mask) >= doubted || medianOf(copperRound(channel, mask), mask) < sureRound)
      continue;
    if (!betweenSides(channel, strips, mask)) continue;
    if (looksLaid(channel, mask, sheet, lamps)) continue;
    for (const k of channel) filled[k] = strict[k] = 0;
  }
  return { ...mask, filled, strict };
}

/**
 * Copper must differ from paper by so much in L*a*b* before the colour tells, and what lies across must be so far on the
 * way from the paper's colour to the strips': on path-traced photographs paper was at 0.05 to 0.2, foil at 0.8 and over.
 * Over the last L* the picture is burnt out, and all looks alike, unless the paper is darker by so much: then foil shines.
 */
const tells = 15;
const onTheWay = 0.6;
const burnt = 95;
const outshines = 8;

/** Whether the doubtful copper has the strips' colour and not the paper's. */
function looksLaid(
  channel: Int32Array,
  mask: CopperMask,
  sheet: SquaredSheet,
  lamps: (x: number, y: number) => boolean,
): boolean {
  const { width, pxPerMm, originMm } = mask;
  const place = channel[channel.length >> 1];
  const x = originMm[0] + ((place % width) + 0.5) / pxPerMm;
  const y = originMm[1] + (Math.floor(place / width) + 0.5) / pxPerMm;
  const round = lamps(x, y) ? undefined : paperRound(channel, mask.filled, sheet);
  const own = medianLab(channel, sheet);
  if (!round) return false;
  if (own[0] > burnt) return round.rim < burnt - outshines;
  const paper = [round.L, round.a, round.b];
  const way = medianLab(copperRound(channel, mask), sheet).map((v, c) => v - paper[c]);
  const length = Math.hypot(...way);
  const along = way.reduce((sum, v, c) => sum + v * (own[c] - paper[c]), 0);
  return length >= tells && along >= onTheWay * length * length;
}

function medianLab(pixels: Int32Array, sheet: SquaredSheet): number[] {
  const labs = Array.from(pixels, (k) => labAt(sheet, k));
  return [0, 1, 2].map((c) => middleOf(Float64Array.from(labs, (lab) => lab[c])));
}

const medianOf = (pixels: Int32Array, { likelihood }: CopperMask): number =>
  pixels.length ? pixels.map((k) => likelihood[k]).sort()[pixels.length >> 1] : 0;

function copperRound(region: Int32Array, mask: CopperMask): Int32Array {
  const { i0, i1, j0, j1 } = boxRound(region, mask, roundMm);
  const own = new Set(region);
  const found: number[] = [];
  for (let j = j0; j <= j1; j++)
    for (let k = j * mask.width + i0; k <= j * mask.width + i1; k++)
      if (mask.filled[k] && !own.has(k)) found.push(k);
  return Int32Array.from(found);
}

/** Whether a region touches two strips, each with its side. */
function betweenSides(region: Int32Array, strips: Uint8Array, mask: CopperMask): boolean {
  const contacts = contactsOf(region, strips, mask);
  return contacts.some((own, n) =>
    contacts.slice(n + 1).some((other) => {
      const pairs = nearestPairs(own, other);
      if (apartMm(pairs, mask) < narrowestMm) return false;
      const bySides = pairs.filter(([a, b]) => isSide(mask, b, a) && isSide(mask, a, b));
      return bySides.length > pairs.length / 2;
    }),
  );
}

/** Where a region touches each of the strips that are apart from each other near it; px. */
function contactsOf(region: Int32Array, strips: Uint8Array, mask: CopperMask): Point[][] {
  const { width } = mask;
  const { i0, i1, j0, j1 } = boxRound(region, mask, 2 * rimMm);
  const [w, h] = [i1 - i0 + 1, j1 - j0 + 1];
  const near = new Uint8Array(w * h);
  for (let j = 0; j < h; j++)
    near.set(strips.subarray((j0 + j) * width + i0, (j0 + j) * width + i1 + 1), j * w);
  const pieces = components(near, w, h, 4).labels;
  const found = new Map<number, Point[]>();
  for (const k of region) {
    const [i, j] = [(k % width) - i0, Math.floor(k / width) - j0];
    const n = j * w + i;
    for (const beside of [n - 1, n + 1, n - w, n + w]) {
      if (!pieces[beside]) continue;
      const known = found.get(pieces[beside]);
      if (known) known.push([i + i0, j + j0]);
      else found.set(pieces[beside], [[i + i0, j + j0]]);
    }
  }
  return [...found.values()];
}

/** Contacts of one strip, some of them, each with the other strip's nearest. */
function nearestPairs(own: readonly Point[], other: readonly Point[]): [Point, Point][] {
  const step = Math.ceil(own.length / most);
  return own
    .filter((_, n) => n % step === 0)
    .map((a) => {
      const far = (b: Point): number => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2;
      return [a, other.reduce((best, b) => (far(b) < far(best) ? b : best))];
    });
}

/** How far two strips lie apart, the median over pairs of contacts, mm. */
function apartMm(pairs: readonly [Point, Point][], { pxPerMm }: CopperMask): number {
  const apart = pairs.map(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1])).sort((p, q) => p - q);
  return (apart[apart.length >> 1] + 1) / pxPerMm;
}

function isSide(mask: CopperMask, from: Point, to: Point): boolean {
  const mm = depth(mask, from, to) / mask.pxPerMm;
  return mm >= sideMm[0] && mm <= sideMm[1];
}

/** How far copper goes on behind `to`, seen from `from`, px. */
function depth({ filled, width, height }: CopperMask, from: Point, to: Point): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return 0;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  for (let t = 1; ; t++) {
    const [i, j] = [Math.round(to[0] + t * ux), Math.round(to[1] + t * uy)];
    if (i < 0 || j < 0 || i >= width || j >= height || !filled[j * width + i]) return t;
  }
}
