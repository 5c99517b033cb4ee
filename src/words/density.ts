import { decimal } from './numbers.ts';
import { inchMm, unit } from './lengths.ts';
import { photoWords } from './photo.ts';

/** How finely a photograph shows the sheet, in words: pixels a mm or an inch. */
export function pixelDensity(pxPerMm: number): string {
  return unit() === 'mm'
    ? photoWords.perMm(decimal(pxPerMm, 1))
    : photoWords.perInch(decimal(pxPerMm * inchMm, 0));
}
