import type { CopperMask } from '../copper/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { blindMap } from './blind.ts';
import { clearances } from './clearance.ts';
import { crossingsOf } from './crossings.ts';
import { faintJoins } from './faint.ts';
import { lampLook } from './lampLook.ts';
import type { Frame } from './frame.ts';
import { labelPieces } from './label.ts';
import { necksOf } from './necks.ts';
import { lookAtNeck } from './neckLook.ts';
import { describePiece } from './piece.ts';
import { borderBlur } from './sharpness.ts';
import { openCells } from './strange.ts';
import type { Traced } from './types.ts';

/**
 * On generated creased strips of known blur nine cuts of ten were told from three standard deviations of the blur on. A
 * sharpened photograph looks sharper than it is: so many of its own pixels leave a trace in any case, and from so many on a
 * cut shows plainly (path-traced photographs of 5 to 7 px/mm, colour kept at half the resolution).
 */
const traces = 2.5;
const shows = 3.5;

/** mm^2: less is a speck. */
export const leastPiece = 1;

/**
 * Pieces of copper and what lies in and between them.
 * @param mask its `filled` is traced
 * @param sheet the picture that the mask was seen on; without it no crossings are told
 */
export function trace(mask: CopperMask, sheet?: SquaredSheet): Traced {
  const { width, height, pxPerMm, originMm, baseMm } = mask;
  const frame: Frame = { width, height, pxPerMm, originMm };
  const { labels, boxes, areas } = labelPieces(mask.filled, width, height, leastPiece * pxPerMm ** 2);
  const pieces = boxes.map((box, k) => describePiece(labels, k + 1, box, areas[k], mask));
  const near = clearances(labels, frame);
  const blurPx = (sheet && borderBlur(pieces, mask, sheet)) ?? 1.5;
  const ofBlur = Math.max(0.25, (3 * blurPx) / pxPerMm);
  const smallest = (pixels: number) => Math.max(ofBlur, pixels / (sheet?.photoPxPerMm ?? pxPerMm));
  return {
    ...frame,
    baseMm,
    labels,
    pieces,
    necks: pieces.flatMap(necksOf).map((neck) => (sheet ? lookAtNeck(neck, mask, sheet) : neck)),
    clearances: near,
    crossings: sheet ? crossingsOf(pieces, labels, near, mask, sheet, blurPx, smallest(traces)) : [],
    smallestGapMm: smallest(shows),
    ...(sheet
      ? {
          faint: faintJoins(labels, mask),
          blind: blindMap(sheet),
          open: openCells(sheet, mask),
          lampLook: lampLook(mask, sheet),
        }
      : {}),
  };
}
