import { length } from '../words/lengths.ts';
import { photoWords } from '../words/photo.ts';
import { exposureOf } from './exposure.ts';
import type { Exposure } from './exposure.ts';
import { edgeSpreadPx } from './sharpness.ts';
import type { Photo } from './types.ts';

export interface PhotoMeasures extends Exposure {
  /** 10-90 % edge spread, px; undefined when the picture has no edges to tell it by. */
  spreadPx: number | undefined;
  /** The narrowest gap that the photograph can show, mm; undefined when scale or spread are not known. */
  smallestGapMm: number | undefined;
  /** What to tell the maker, most pressing first; empty when all is well. */
  say: string[];
}

/** A gap shows over some 7 px of a sharp picture (spread 2 px), and over two and a half spreads of a soft one. */
const spreadsPerGap = 2.5;
const sharpSpreadPx = 2;

/** @returns mm @param pxPerMm photograph's px per mm on the base, the least over its area */
export function smallestGapMm(spreadPx: number, pxPerMm: number): number {
  return (spreadsPerGap * Math.hypot(spreadPx, sharpSpreadPx)) / pxPerMm;
}

/**
 * How well a photograph will do, before anything is looked for in it.
 * @param pxPerMm once the base is known (`SquaredSheet.photoPxPerMm`)
 * @param wantedGapMm the gap that should be seen
 */
export function measurePhoto(photo: Photo, pxPerMm?: number, wantedGapMm = 0.8): PhotoMeasures {
  const exposure = exposureOf(photo);
  const spreadPx = edgeSpreadPx(photo);
  const smallest =
    spreadPx === undefined || pxPerMm === undefined ? undefined : smallestGapMm(spreadPx, pxPerMm);
  return {
    ...exposure,
    spreadPx,
    smallestGapMm: smallest,
    say: sentences(exposure, spreadPx, smallest, wantedGapMm, photo.width),
  };
}

function sentences(
  { clipped, middle }: Exposure,
  spreadPx: number | undefined,
  smallest: number | undefined,
  wanted: number,
  width: number,
): string[] {
  const say: string[] = [];
  if (middle < 28) say.push(photoWords.tooDark);
  if (clipped > 0.08) say.push(photoWords.burntOut(Math.round(100 * clipped)));
  if (spreadPx === undefined || spreadPx > Math.max(8, width / 250)) say.push(photoWords.blurred);
  if (smallest !== undefined && smallest > wanted) say.push(photoWords.tooSoft(length(wanted)));
  return say;
}
