import type { SquaredSheet } from '../sheet/index.ts';
import type { RootPlanes } from './lab.ts';
import type { RelativeLab } from './relative.ts';
import { addStripScore } from './strips.ts';

/** What tells how far a mask that was seen without learning can be trusted. All shares 0..1. */
export interface Signs {
  /** Of the sheet, burnt out to white: copper and paper look alike there. */
  burnt: number;
  /** Of the sheet, in shade too deep to tell colours. */
  dark: number;
  /** Of all that might be copper, neither clearly strip-shaped nor clearly not. */
  doubtful: number;
  /** Of the mask, shaped like strips of tape. */
  shapely: number;
  /** Of the sheet, copper. */
  covered: number;
}

export function readSigns(
  sheet: SquaredSheet,
  small: RootPlanes,
  relative: RelativeLab,
  evidence: Float32Array,
  filled: Uint8Array,
  shrink: number,
  scale: number,
): Signs {
  const { width, height, fy } = small;
  const mask = new Uint8Array(width * height);
  const shape = new Float32Array(width * height);
  let burnt = 0;
  let dark = 0;
  let maybe = 0;
  let between = 0;
  let covered = 0;
  for (let j = 0, n = 0; j < height; j++) {
    for (let i = 0; i < width; i++, n++) {
      mask[n] = filled[(j * shrink + (shrink >> 1)) * sheet.width + i * shrink + (shrink >> 1)];
      covered += mask[n];
      const paper = fy[n] / Math.max(0.01, (relative.L[n] + 16) / 116);
      if (fy[n] > 0.992) burnt++;
      if (116 * paper - 16 < 25) dark++;
      if (evidence[n] > 0.1) maybe++;
      if (evidence[n] > 0.1 && evidence[n] < 0.7) between++;
    }
  }
  addStripScore(mask, width, height, scale, shape);
  let shapely = 0;
  for (let n = 0; n < mask.length; n++) if (mask[n]) shapely += shape[n];
  const all = width * height;
  return {
    burnt: burnt / all,
    dark: dark / all,
    doubtful: maybe ? between / maybe : 0,
    shapely: covered ? shapely / covered : 0,
    covered: covered / all,
  };
}
