import { FoilproofError } from '../words/index.ts';
import { photoWords } from '../words/photo.ts';
import { sniff } from './sniff.ts';
import type { Sniffed } from './sniff.ts';

/** Largest picture that is decoded, megapixels. */
export const largestMegapixels = 100;
/** Least side in pixels: a strip of 2 mm on an A6 sheet is 2 px wide at this size. */
export const leastSidePx = 150;

const readKinds = ['jpeg', 'png', 'webp', 'heic', 'avif'];

/**
 * Refuses what cannot be a photograph of a sheet, before any memory is spent on decoding it.
 * @param name shown in the sentence
 * @throws FoilproofError for 0 bytes, unknown or unread kinds, too few or too many pixels
 */
export function checkFile(name: string, bytes: Uint8Array): Sniffed {
  if (bytes.length === 0) throw new FoilproofError(photoWords.empty(name));
  const sniffed = sniff(bytes);
  if (!sniffed) throw new FoilproofError(photoWords.notAnImage(name));
  if (!readKinds.includes(sniffed.kind)) throw new FoilproofError(photoWords.otherKind(name, sniffed.kind));
  if (sniffed.width === undefined || sniffed.height === undefined) {
    if (sniffed.kind === 'heic' || sniffed.kind === 'avif') return sniffed;
    throw new FoilproofError(photoWords.truncated(name));
  }
  checkSize(name, sniffed.width, sniffed.height);
  return sniffed;
}

/** @throws FoilproofError when a picture of width x height px is too small or too large to work on */
export function checkSize(name: string, width: number, height: number): void {
  const megapixels = (width * height) / 1e6;
  if (megapixels > largestMegapixels) {
    throw new FoilproofError(photoWords.tooLarge(name, Math.ceil(megapixels), largestMegapixels));
  }
  if (Math.min(width, height) < leastSidePx)
    throw new FoilproofError(photoWords.tooSmall(name, width, height));
}
