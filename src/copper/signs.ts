import type { SquaredSheet } from '../sheet/index.ts';
import type { RootPlanes } from './lab.ts';
import type { RelativeLab } from './relative.ts';
import { addStripScore } from './strips.ts';

/** What tells how far a mask can be trusted. All are shares, 0..1. */
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

/** Cube root of light from which on a pixel is burnt out, and lightness of paper below which it is in deep shade. */
const burntRoot = 0.992;
const darkPaper = 25;

export function readSigns(
  { fy }: RootPlanes,
  { L }: RelativeLab,
  evidence: Float32Array,
): Pick<Signs, 'burnt' | 'dark' | 'doubtful'> {
  let burnt = 0;
  let dark = 0;
  let maybe = 0;
  let between = 0;
  for (let n = 0; n < fy.length; n++) {
    const paper = fy[n] / Math.max(0.01, (L[n] + 16) / 116);
    if (fy[n] > burntRoot) burnt++;
    if (116 * paper - 16 < darkPaper) dark++;
    if (evidence[n] > 0.1) maybe++;
    if (evidence[n] > 0.1 && evidence[n] < 0.7) between++;
  }
  return { burnt: burnt / fy.length, dark: dark / fy.length, doubtful: maybe ? between / maybe : 0 };
}

/** How much of a mask is shaped like strips, looked at with about 2 px/mm. */
export function shapeOf(
  filled: Uint8Array,
  { width, height, pxPerMm }: SquaredSheet,
): Pick<Signs, 'shapely' | 'covered'> {
  const shrink = Math.max(1, Math.round(pxPerMm / 2));
  const w = Math.floor(width / shrink);
  const h = Math.floor(height / shrink);
  const mask = new Uint8Array(w * h);
  const score = new Float32Array(w * h);
  for (let j = 0, n = 0; j < h; j++) {
    const row = (j * shrink + (shrink >> 1)) * width + (shrink >> 1);
    for (let i = 0; i < w; i++, n++) mask[n] = filled[row + i * shrink];
  }
  addStripScore(mask, w, h, pxPerMm / shrink, score);
  let copper = 0;
  let shapely = 0;
  for (let n = 0; n < mask.length; n++) {
    if (!mask[n]) continue;
    copper++;
    shapely += score[n];
  }
  return { shapely: copper ? shapely / copper : 0, covered: copper / mask.length };
}
