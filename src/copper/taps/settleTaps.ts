import type { Cv } from '../../engine/openCv.ts';
import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask, LearnedMap, SoundPlace } from '../types.ts';
import { growByTaps } from './byColour.ts';
import { ribbonAt } from './joinAt.ts';
import { painted } from './paint.ts';
import { pieceAt, regionRound } from './pieceAt.ts';
import { takeOut } from './takeOut.ts';

/** The maker's taps, mm: "this is copper", "this is paper". */
export interface Taps {
  copper: readonly Point[];
  paper: readonly Point[];
}

/** Chance, 0..255, from which on the nets take a pixel for copper. */
const sure = 128;
/** Farthest that two mouths are apart where a tap joins them, mm; and where the colours found nothing to grow there. */
const openMm = 4;
const missedMm = 40;
/** Less than this is no tape but the tap itself, mm^2. */
const littleMm2 = 6;
/** Beyond a ribbon's end its join is as sound as within, mm. */
const soundMm = 1;
/** Copper is as good as its maker says within so much of a tap, mm. */
const swornMm = 1.5;
/** No tape is wider, mm. */
const widestMm = 9;

/**
 * One tap settles one mistake. A tap on copper closes the opening between two strips there, grows the tape that was missed,
 * or says that the copper seen there is sound; a tap on paper takes out a false piece or region whole, or opens a strip right across.
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
    else if (pieceAt(next, tap, 0)) next = sworn(next, tap);
    else missed.push(tap);
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

/** Copper that is seen and said to be copper: a doubt about it is settled. */
function sworn(mask: CopperMask, at: Point): CopperMask {
  const place: SoundPlace = { at, along: [1, 0], alongMm: swornMm, acrossMm: swornMm };
  return { ...mask, sound: [...(mask.sound ?? []), place] };
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
  const { at, along, apartMm, broadMm } = ribbon;
  const place = { at, along, alongMm: apartMm / 2 + soundMm, acrossMm: broadMm / 2 + soundMm };
  return { ...painted(mask, ribbon.pixels, 1), sound: [...(mask.sound ?? []), place] };
}
