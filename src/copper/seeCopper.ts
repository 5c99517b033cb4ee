import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { components, sizesOf } from './components.ts';
import { hysteresis } from './hysteresis.ts';
import { rootPlanes } from './lab.ts';
import { copperLikelihood } from './likeness.ts';
import { paperField } from './paper.ts';
import { relativeLab } from './relative.ts';
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

/** Copper on a squared sheet, told from the local paper's colour. */
export function seeCopper(sheet: SquaredSheet, _options: SeeOptions = {}): CopperMask {
  const { width, height, pxPerMm } = sheet;
  const small = rootPlanes(sheet.rgb, width, height, 4);
  const cell = Math.max(2, Math.round((3 * pxPerMm) / 4));
  const paper = paperField(small, cell, 5);
  const relative = relativeLab(rootPlanes(sheet.rgb, width, height), paper, cell * 4);
  const likelihood = copperLikelihood(relative);
  const strict = dropSpecks(
    hysteresis(likelihood, width, height, 90, 150, 20),
    width,
    height,
    3 * pxPerMm ** 2,
  );
  const filled = fillPinholes(strict, width, height, pxPerMm ** 2);
  return {
    width,
    height,
    pxPerMm,
    originMm: sheet.originMm,
    baseMm: sheet.baseMm,
    filled,
    strict,
    likelihood,
    readable: 1,
    troubles: [],
    by: 'classical',
  };
}

/** Drops regions under `least` pixels. */
function dropSpecks(mask: Uint8Array, width: number, height: number, least: number): Uint8Array {
  const found = components(mask, width, height, 4);
  const sizes = sizesOf(found);
  return mask.map((_, k) => (found.labels[k] && sizes[found.labels[k]] >= least ? 1 : 0));
}

/** Fills holes of paper under `most` pixels. */
function fillPinholes(mask: Uint8Array, width: number, height: number, most: number): Uint8Array {
  const ground = components(
    mask.map((m) => 1 - m),
    width,
    height,
    8,
  );
  const sizes = sizesOf(ground);
  return mask.map((m, k) => (m || sizes[ground.labels[k]] < most ? 1 : 0));
}
