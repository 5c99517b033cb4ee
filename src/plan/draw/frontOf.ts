import type { Card } from '../../card/index.ts';
import type { Photo } from '../../photo/index.ts';
import type { Outline, SquaredSheet } from '../../sheet/index.ts';
import { squareUp, turnCorners } from '../../sheet/index.ts';
import { baseSize } from './artwork.ts';
import type { FrontMiss } from './checkFront.ts';
import { checkFront } from './checkFront.ts';

export interface FrontCheck {
  misses: FrontMiss[];
  /** The front squared up, as it was photographed: its back is mirrored left to right. */
  sheet: SquaredSheet;
}

const PX_PER_MM = 10;

/**
 * A photographed front against the lamps. An outline does not tell top from bottom: of both the one whose holes suit
 * the lamps better is taken.
 */
export function frontOf(photo: Photo, outline: Outline, card: Card, side: 'back' | 'face'): FrontCheck {
  const seen = [0, 2].map((turn) => {
    const corners = turnCorners(outline.cornersPx, turn);
    const sheet = squareUp(photo, corners, baseSize(card), { pxPerMm: PX_PER_MM, k1: outline.k1 });
    return { sheet, misses: checkFront(sheet, card, side) };
  });
  return seen.sort((a, b) => badness(a.misses) - badness(b.misses))[0];
}

/** Whole miss, mm; a lamp with no hole near it counts as more than any that has one. */
function badness(misses: FrontMiss[]): number {
  return misses.reduce((sum, { missMm }) => sum + (missMm ?? 20), 0);
}
