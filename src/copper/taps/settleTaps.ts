import type { Cv } from '../../engine/openCv.ts';
import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask, LearnedMap } from '../types.ts';
import { pastEdge } from '../dropRim.ts';
import { dropAlike, growByTaps } from './byColour.ts';
import { ribbonAt } from './joinAt.ts';
import { openingAt, type Opening } from './openAt.ts';
import { pieceAt, regionRound, type TappedPiece } from './pieceAt.ts';

/** The maker's taps, mm: "this is copper", "this is paper". */
export interface Taps {
  copper: readonly Point[];
  paper: readonly Point[];
}

/** Likelihoods given to what a tap has settled. */
const likely = 230;
const unlikely = 25;
/** Chance, 0..255, from which on the nets take a pixel for copper. */
const sure = 128;
/** Farthest that two mouths are apart where a tap joins them, mm; and where the colours found nothing to grow there. */
const openMm = 4;
const missedMm = 40;
/** Less than this is no tape but the tap itself, mm^2. */
const littleMm2 = 6;
/** Beyond a ribbon's end its join is as sound as within, mm. */
const soundMm = 1;
/** A piece that stands alone is taken out whole where it is no larger than this, mm^2, and no opening shows in it. */
const tinyMm2 = 30;
/** A larger one must be no strip and look the same all over; beyond the first size hardly anything of an opening may show. */
const smallMm2 = 120;
const largeMm2 = 400;
const unseenTo = 1;
const alikeShare = 0.5;
/** What lies round a tap within so much is what was tapped, mm; what differs from it by so much, 0..255, at least and at most is another thing. */
const tappedMm = 0.8;
const [leastOff, mostOff] = [15, 40];
/** What runs along the base's edge over this share of its length and is no broader, mm. */
const rim = { nearMm: 0.8, share: 0.6, broadMm: 5 };
/** A tap within so much of a piece lies on it, mm. */
const onPieceMm = 0.4;
/** Nor is there tape so narrow or so wide, mm. */
const narrowestMm = 1.9;
const widestMm = 9;
/** An opening is seen from so much evidence on. */
const seenFrom = 2.5;

/**
 * One tap settles one mistake. A tap on copper closes the opening between two strips there, or grows the tape that was
 * missed; a tap on paper takes out a false piece or region whole, or opens a strip right across.
 * @param openCv called only where colours are to be divided
 */
export async function settleTaps(
  openCv: () => Promise<Cv>,
  sheet: SquaredSheet,
  mask: CopperMask,
  learned: LearnedMap | undefined,
  { copper, paper }: Taps,
): Promise<CopperMask> {
  if (!copper.length && !paper.length) return mask;
  let next = mask;
  const missed: Point[] = [];
  for (const tap of copper) {
    const joined = join(next, sheet, tap, openMm);
    if (joined) next = joined;
    else if (!pieceAt(next, tap, 0)) missed.push(tap);
  }
  if (missed.length) next = await grow(openCv, sheet, next, learned, { copper: missed, paper });
  for (const tap of paper) next = takeOut(next, sheet, tap);
  return next;
}

/**
 * Tape that was missed: what the nets see there after all, or else what has its colours; where they show little of it, as
 * far as the two ends that face each other there.
 */
async function grow(
  openCv: () => Promise<Cv>,
  sheet: SquaredSheet,
  mask: CopperMask,
  learned: LearnedMap | undefined,
  taps: Taps,
): Promise<CopperMask> {
  if (!learned) return mask;
  let next = mask;
  for (const tap of taps.copper) next = restored(next, learned, tap);
  const missed = taps.copper.filter((tap) => !pieceAt(next, tap, 0));
  if (!missed.length) return next;
  const grown = growByTaps(await openCv(), sheet, next, learned, { copper: missed, paper: taps.paper });
  const before = next;
  next = grown;
  for (const tap of missed) {
    if ((pieceAt(grown, tap, 0)?.areaMm2 ?? 0) < littleMm2)
      next = join(next, sheet, tap, missedMm, before) ?? next;
  }
  return next;
}

/** What the nets take for copper at a tap and the rules after them took out again. */
function restored(mask: CopperMask, { copper }: LearnedMap, tap: Point): CopperMask {
  const { width, height, pxPerMm, originMm } = mask;
  const [i, j] = [0, 1].map((c) => Math.floor((tap[c] - originMm[c]) * pxPerMm));
  if (i < 0 || j < 0 || i >= width || j >= height || copper[j * width + i] < sure) return mask;
  const lost = copper.map((chance, k) => (chance >= sure && !mask.filled[k] ? 1 : 0));
  if (!lost[j * width + i]) return mask;
  return painted(mask, regionRound(lost, j * width + i, width, height), 1);
}

/** @param seen the mask in which the mouths are looked for */
function join(
  mask: CopperMask,
  sheet: SquaredSheet,
  tap: Point,
  mostMm: number,
  seen = mask,
): CopperMask | undefined {
  const ribbon = ribbonAt(seen, sheet, tap, mostMm);
  if (!ribbon || (mostMm > openMm && ribbon.broadMm > widestMm)) return undefined;
  const reachMm = ribbon.apartMm / 2 + soundMm;
  return { ...painted(mask, ribbon.pixels, 1), sound: [...(mask.sound ?? []), { at: ribbon.at, reachMm }] };
}

function takeOut(mask: CopperMask, sheet: SquaredSheet, tap: Point): CopperMask {
  const piece = pieceAt(mask, tap, onPieceMm);
  if (piece && isRim(piece, mask)) return painted(mask, piece.pixels, 0);
  if (piece && piece.insideMm > widestMm / 2) return dropAlike(sheet, mask, [tap]);
  if (piece && piece.broadMm < narrowestMm) return painted(mask, piece.pixels, 0);
  const opening = openingAt(mask, sheet, tap);
  if (piece && standsFalse(piece, opening, tap, sheet, mask)) return painted(mask, piece.pixels, 0);
  if (!opening) return piece ? dropAlike(sheet, mask, [tap]) : mask;
  const opened = painted(mask, opening.pixels, 0);
  return { ...opened, cuts: [...(mask.cuts ?? []), opening.cut] };
}

/** Whether a piece runs along the base's edge: what the base lies on is seen there. */
function isRim({ pixels, broadMm }: TappedPiece, mask: CopperMask): boolean {
  const off = pastEdge(mask);
  const near = pixels.filter((k) => off(k) <= rim.nearMm).length / (rim.nearMm * mask.pxPerMm);
  const long = pixels.length / (Math.max(broadMm, rim.nearMm) * mask.pxPerMm);
  return broadMm <= rim.broadMm && near >= rim.share * long;
}

/** Whether a piece is no tape at all, as against one that is to be opened where it was tapped. */
function standsFalse(
  { areaMm2, isStrip, pixels }: TappedPiece,
  opening: Opening | undefined,
  tap: Point,
  sheet: SquaredSheet,
  mask: CopperMask,
): boolean {
  const seen = opening ? Math.max(opening.evidence.paper, opening.evidence.ridge) : 0;
  if (areaMm2 <= tinyMm2) return seen < seenFrom;
  if (isStrip || areaMm2 > largeMm2 || seen >= (areaMm2 <= smallMm2 ? seenFrom : unseenTo)) return false;
  return looksAlike(pixels, tap, sheet, mask) >= alikeShare;
}

/** Share of a piece's pixels that look like what was tapped: as far off as that is within itself, three times over. */
function looksAlike(pixels: readonly number[], tap: Point, sheet: SquaredSheet, mask: CopperMask): number {
  const { width, pxPerMm, originMm } = mask;
  const [x, y] = [0, 1].map((c) => (tap[c] - originMm[c]) * pxPerMm);
  const near = (k: number): boolean =>
    Math.hypot((k % width) + 0.5 - x, Math.floor(k / width) + 0.5 - y) <= tappedMm * pxPerMm;
  const tapped = pixels.filter(near);
  if (tapped.length === 0) return 0;
  const channels = [0, 1, 2].map((c) => {
    const values = tapped.map((k) => sheet.rgb[3 * k + c]);
    const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
    const scatter = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length);
    return { mean, most: Math.min(mostOff, Math.max(leastOff, 3 * scatter)) };
  });
  const alike = pixels.filter((k) =>
    channels.every(({ mean, most }, c) => Math.abs(sheet.rgb[3 * k + c] - mean) <= most),
  );
  return alike.length / pixels.length;
}

function painted(mask: CopperMask, pixels: Iterable<number>, copper: 0 | 1): CopperMask {
  const next = {
    ...mask,
    filled: mask.filled.slice(),
    strict: mask.strict.slice(),
    likelihood: mask.likelihood.slice(),
  };
  for (const k of pixels) {
    next.filled[k] = next.strict[k] = copper;
    next.likelihood[k] = copper
      ? Math.max(likely, mask.likelihood[k])
      : Math.min(unlikely, mask.likelihood[k]);
  }
  return next;
}
