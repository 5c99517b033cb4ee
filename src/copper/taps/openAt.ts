import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask, SeenCut } from '../types.ts';
import { evidenceOn, type Evidence } from './evidence.ts';
import { isCopper, isSlit, linesAbout, linesAcross, longestMm, nearMm, type Across } from './lines.ts';
import { onSheet, patchRound, type Patch } from './patch.ts';
import { parts } from './parts.ts';

/** An opening right across a strip, as the maker points at it. */
export interface Opening {
  /** Pixels of the sheet that are opened. */
  pixels: number[];
  cut: SeenCut;
  /** What the picture shows of it. */
  evidence: Evidence;
}

/** Shares of a step by which the best line is turned and moved, one after the other. */
const finer = [0.5, 0.5, 0.25];

interface Weighed {
  line: Across;
  evidence: Evidence;
  weight: number;
}

/** A finger's aim, mm: so far off its weight falls. */
const aimMm = 0.5;
/** What a line longer than the shortest across loses. */
const ofLength = 1.5;
const ofDoubt = 0.8;
/** mm beyond a line's ends over which what still hangs on to it is opened too, for borders that fray. */
const frayMm = 0.6;

/** A tap on copper or within so much of it, mm, means that copper. */
const onCopperMm = 0.3;
/**
 * Beside copper a tap means a slit that it lies in, or a thread no longer than this that runs so near to it, mm, and of
 * which the picture shows so much: it is no word against the strip that it lies beside.
 */
const thread = { longMm: 3, offMm: 0.8 };
const leastBeside = 2;

function isOnCopper(patch: Patch): boolean {
  const reach = onCopperMm * patch.pxPerMm;
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++)
      if (isCopper(patch, patch.at[0] + dx, patch.at[1] + dy)) return true;
  return false;
}

function pointedAt(patch: Patch): (line: Across) => boolean {
  if (isOnCopper(patch)) return () => true;
  const { at, pxPerMm } = patch;
  return ({ off, length, way }) =>
    off <= thread.offMm * pxPerMm && (length <= thread.longMm * pxPerMm || isSlit(patch, at[0], at[1], way));
}

/** The opening at a tap: of all lines right across the copper near it the one that the picture shows best. */
export function openingAt(mask: CopperMask, sheet: SquaredSheet, tap: Point): Opening | undefined {
  const patch = patchRound(mask, sheet, tap, longestMm + nearMm);
  const pointed = pointedAt(patch);
  const lines = linesAcross(patch).filter(pointed);
  const shortest = Math.min(...lines.map(({ length }) => length));
  const weigh = (line: Across): Weighed => {
    const evidence = evidenceOn(line, patch, mask, sheet);
    const { paper, ridge, doubt } = evidence;
    const far = line.off / (aimMm * patch.pxPerMm);
    const longer = line.length / Math.max(patch.pxPerMm, shortest) - 1;
    const weight = paper + ridge + ofDoubt * doubt - (far * far) / 2 - ofLength * longer;
    return { line, evidence, weight };
  };
  const beside = !isOnCopper(patch);
  const shown = ({ evidence: { paper, ridge, doubt } }: Weighed): boolean =>
    !beside || Math.max(paper, ridge) + doubt >= leastBeside;
  const bestOf = (all: Weighed[]): Weighed | undefined =>
    all.sort((p, q) => q.weight - p.weight).find((each) => shown(each) && parts(patch, each.line));
  let best: Weighed | undefined = bestOf(lines.map(weigh));
  if (!best) return undefined;
  for (const share of finer) {
    const about: Weighed[] = linesAbout(patch, best.line, share).filter(pointed).map(weigh);
    best = bestOf([best, ...about]) ?? best;
  }
  return {
    pixels: pixelsOf(best.line, best.evidence, patch, mask),
    cut: cutOf(best.line, best.evidence, patch, mask),
    evidence: best.evidence,
  };
}

function pixelsOf(
  { from, to, way, normal, length }: Across,
  { before, behind }: Evidence,
  patch: Patch,
  { width }: CopperMask,
): number[] {
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const ends = [-1, 1].map((sign) => frayedEnd(patch, middle, sign, way, normal, length / 2, before, behind));
  const found: number[] = [];
  for (let n = 0; n < patch.copper.length; n++) {
    if (!patch.copper[n]) continue;
    const [dx, dy] = [(n % patch.width) + 0.5 - middle[0], Math.floor(n / patch.width) + 0.5 - middle[1]];
    const s = dx * normal[0] + dy * normal[1];
    const t = dx * way[0] + dy * way[1];
    if (s < -before || s > behind || t < -ends[0] || t > ends[1]) continue;
    found.push(onSheet(patch, n, width));
  }
  return found;
}

/** How far from its middle a line goes on one side: to where the mask ends over its whole breadth. */
function frayedEnd(
  patch: Patch,
  [x, y]: Point,
  sign: number,
  way: Point,
  normal: Point,
  from: number,
  before: number,
  behind: number,
): number {
  const most = from + frayMm * patch.pxPerMm;
  for (let t = from; t < most; t += 0.5) {
    let held = false;
    for (let s = -before; s <= behind && !held; s += 0.5)
      held = isCopper(patch, x + sign * t * way[0] + s * normal[0], y + sign * t * way[1] + s * normal[1]);
    if (!held) return t + 1;
  }
  return most;
}

/** Chance of a cut that the maker has pointed at. */
const tapped = 0.95;

function cutOf(
  { from, to, normal, length }: Across,
  { before, behind }: Evidence,
  { i0, j0, pxPerMm }: Patch,
  { originMm }: CopperMask,
): SeenCut {
  const off = (behind - before) / 2;
  const x = i0 + (from[0] + to[0]) / 2 + off * normal[0];
  const y = j0 + (from[1] + to[1]) / 2 + off * normal[1];
  return {
    at: [originMm[0] + x / pxPerMm, originMm[1] + y / pxPerMm],
    widthMm: (before + behind) / pxPerMm,
    along: normal,
    stripMm: length / pxPerMm,
    sure: tapped,
  };
}
