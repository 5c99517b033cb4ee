import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { classical } from './classical.ts';
import type { CopperMask } from './types.ts';

/** What the learned net says of each pixel of the sheet, 0..255, row-major, width*height. */
export interface LearnedMap {
  copper: Uint8Array;
  lamp: Uint8Array;
  cell: Uint8Array;
}

export interface SeeOptions {
  /** Places on the tape, mm, that the maker tapped to teach a hard photograph. */
  teachCopper?: readonly Point[];
  /** Places on bare paper, mm. */
  teachPaper?: readonly Point[];
  learned?: LearnedMap;
}

/** Copper on a squared sheet, told from the local paper's colour and from the shape of tape. */
export function seeCopper(sheet: SquaredSheet, options: SeeOptions = {}): CopperMask {
  const seen = classical(sheet, options.teachCopper ?? [], options.teachPaper ?? []);
  const { width, height, pxPerMm, originMm, baseMm } = sheet;
  return { width, height, pxPerMm, originMm, baseMm, ...seen, readable: 1, troubles: [], by: 'classical' };
}
