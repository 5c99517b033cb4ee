import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask } from '../types.ts';
import { dropAlike } from './byColour.ts';
import { openingAt, type Opening } from './openAt.ts';
import { painted } from './paint.ts';
import { pieceAt, type TappedPiece } from './pieceAt.ts';

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
/** There is no tape so narrow or so wide, mm. */
const narrowestMm = 1.9;
const widestMm = 9;
/** An opening is seen from so much evidence on. */
const seenFrom = 2.5;

/** What a tap on paper says: a false piece or region goes, or else the strip is opened right across there. @param tap mm */
export function takeOut(mask: CopperMask, sheet: SquaredSheet, tap: Point): CopperMask {
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

/** How far a pixel is from the base's edge, inside or out, mm. */
function pastEdge({ width, pxPerMm, originMm, baseMm }: CopperMask): (k: number) => number {
  return (k) => {
    const x = originMm[0] + ((k % width) + 0.5) / pxPerMm;
    const y = originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm;
    const inside = Math.min(x, y, baseMm.width - x, baseMm.height - y);
    return Math.abs(inside);
  };
}
