import type { CopperMask } from '../../src/copper/index.ts';
import type { TrueMask } from './entry.ts';
import type { Frame } from './frame.ts';
import { boundaryF, iou, regions, within } from './maskScore.ts';
import type { Binary } from './maskScore.ts';

export interface MaskScore {
  iou: number;
  iouStrict: number;
  boundaryF: number;
  pieces: Pieces;
  /** The same of what nothing covers: a leg, a finger or a wire over a strip parts it in both. */
  open: Pieces;
}

/** How many pieces of copper there are, and how many were found. */
export interface Pieces {
  truly: number;
  found: number;
}

/** The compared masks' scale. */
export const pxPerMm = 10;

/** A mask and the truth in the true base's frame at 10 px/mm, so that a corner's error is not counted twice. */
export interface Compared {
  mine: Binary;
  strict: Binary;
  theirs: Binary;
}

/** Area from which on a region is a piece, px^2. */
export const leastPiece = 4 * pxPerMm ** 2;

export function compareMask(
  mask: CopperMask,
  seen: Frame,
  truth: TrueMask,
  trueFrame: Frame,
  base: { width_mm: number; height_mm: number },
): MaskScore {
  const { mine, strict, theirs } = inTrueFrame(mask, seen, truth, trueFrame, base);
  return {
    iou: iou(mine, theirs, truth.valid),
    iouStrict: iou(strict, theirs, truth.valid),
    boundaryF: boundaryF(mine, theirs, 0.3 * pxPerMm, truth.valid),
    pieces: { truly: regions(theirs, leastPiece), found: regions(mine, leastPiece) },
    open: {
      truly: regions(within(theirs, truth.valid), leastPiece),
      found: regions(within(mine, truth.valid), leastPiece),
    },
  };
}

export function inTrueFrame(
  mask: CopperMask,
  seen: Frame,
  truth: TrueMask,
  trueFrame: Frame,
  base: { width_mm: number; height_mm: number },
): Compared {
  const width = Math.round(base.width_mm * pxPerMm);
  const height = Math.round(base.height_mm * pxPerMm);
  const blank = (): Binary => ({ width, height, data: new Uint8Array(width * height) });
  const [mine, strict, theirs] = [blank(), blank(), blank()];
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      const px = trueFrame.toPx([(i + 0.5) / pxPerMm, (j + 0.5) / pxPerMm]);
      const at = j * width + i;
      theirs.data[at] = truth.frame === 'base' ? truth.copper[at] : sample(truth, px[0], px[1]);
      const [x, y] = seen.toMm(px);
      const u = Math.floor((x - mask.originMm[0]) * mask.pxPerMm);
      const v = Math.floor((y - mask.originMm[1]) * mask.pxPerMm);
      if (u < 0 || v < 0 || u >= mask.width || v >= mask.height) continue;
      mine.data[at] = mask.filled[v * mask.width + u];
      strict.data[at] = mask.strict[v * mask.width + u];
    }
  }
  return { mine, strict, theirs };
}

function sample(truth: TrueMask, x: number, y: number): number {
  const i = Math.floor(x);
  const j = Math.floor(y);
  if (i < 0 || j < 0 || i >= truth.width || j >= truth.height) return 0;
  return truth.copper[j * truth.width + i];
}
