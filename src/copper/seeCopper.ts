import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { classical } from './classical.ts';
import { fuseLearned } from './fuseLearned.ts';
import { openBrink } from './openBrink.ts';
import { meanLikelihood, readAlone, readTogether } from './readable.ts';
import { shapeOf } from './signs.ts';
import type { CopperMask, LearnedMap } from './types.ts';

export interface SeeOptions {
  /** Places on the tape, mm, that the maker tapped to teach a hard photograph; with `learned`, `settleTaps` takes them. */
  teachCopper?: readonly Point[];
  /** Places on bare paper, mm. */
  teachPaper?: readonly Point[];
  /** What the trained net says; it leads then, and what is seen without it bears witness. */
  learned?: LearnedMap;
}

/**
 * Copper on a squared sheet. Without the net it is told from the local paper's colour and from the shape of tape. A mask
 * that cannot be trusted says so by `readable` under 0.5, and why by `troubles`.
 */
export function seeCopper(sheet: SquaredSheet, options: SeeOptions = {}): CopperMask {
  const { teachCopper = [], teachPaper = [], learned } = options;
  const { width, height, pxPerMm, originMm, baseMm } = sheet;
  const frame = { width, height, pxPerMm, originMm, baseMm };
  const { signs, ...seen } = classical(sheet, teachCopper, teachPaper);
  if (!learned) return { ...frame, ...seen, ...readAlone(signs), by: 'classical' };
  const fused = openBrink(fuseLearned(sheet, seen, learned), frame);
  const reading = readTogether(
    { ...signs, ...shapeOf(fused.filled, sheet) },
    { mean: meanLikelihood(fused), agreement: overlap(fused.filled, seen.filled) },
  );
  return { ...frame, ...fused, ...reading, lamp: learned.lamp, by: 'learned' };
}

/** Intersection over union of two masks; 1 when both are empty. */
export function overlap(a: Uint8Array, b: Uint8Array): number {
  let both = 0;
  let either = 0;
  for (let k = 0; k < a.length; k++) {
    both += a[k] & b[k];
    either += a[k] | b[k];
  }
  return either ? both / either : 1;
}
