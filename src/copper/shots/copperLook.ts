import type { SquaredSheet } from '../../sheet/index.ts';
import { rootPlanes } from '../lab.ts';
import { paperField, type PaperField } from '../paper.ts';
import { darkestPaper, unlikePaper } from '../scores.ts';
import type { Plane } from './plane.ts';

/** What a shot shows of copper, in planes of one size. */
export interface CopperLook {
  paper: PaperField;
  /** How unlike the paper's colour, 0..1. Lightness counts for less than colour: a shadow is no copper. */
  unlike: Plane;
  /** Lightness as a share of the paper's, both as cube roots. */
  light: Float32Array;
  /** Steps of lightness between neighbours: creased copper is restless, paper and fingers are not. */
  steps: Float32Array;
  /** 1 where the picture is burnt out. */
  burnt: Uint8Array;
}

/** Unlikeness, in the paper's own scatter, from which on it counts in full, and the say of lightness in it. */
const fullyUnlike = 5;
const lightShare = 0.4;
/** A step by this share of the paper's lightness (as a cube root) counts as 1. */
const fullStep = 0.1;
/** Cube root of light from which on a pixel is burnt out and tells nothing. */
const burntRoot = 0.985;

/** @param shrink side of the square of pixels that is made one */
export function copperLook({ rgb, width: w, height: h, pxPerMm }: SquaredSheet, shrink: number): CopperLook {
  const planes = rootPlanes(rgb, w, h, shrink);
  const { width, height, fx, fy, fz } = planes;
  const paper = paperField(planes, Math.max(1, Math.round((3.2 * pxPerMm) / shrink)), 5);
  const values = new Float32Array(width * height);
  const light = new Float32Array(width * height);
  const steps = new Float32Array(width * height);
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const n = Math.floor(j / paper.cell) * paper.columns + Math.floor(i / paper.cell);
      const white = Math.max(darkestPaper, paper.fy[n]);
      const x = fx[k] / Math.max(darkestPaper, paper.fx[n]);
      const y = fy[k] / white;
      const z = fz[k] / Math.max(darkestPaper, paper.fz[n]);
      const unlike = unlikePaper(lightShare * 116 * (y - 1), 500 * (x - y), 200 * (y - z));
      light[k] = y;
      values[k] = Math.min(1, unlike / fullyUnlike);
      if (i > 0 && j > 0)
        steps[k] = Math.hypot(fy[k] - fy[k - 1], fy[k] - fy[k - width]) / (white * fullStep);
    }
  }
  const burnt = Uint8Array.from(fy, (v) => (v > burntRoot ? 1 : 0));
  return { paper, unlike: { width, height, values }, light, steps, burnt };
}

/** What shots are laid over each other by: copper by its colour, and where it mirrors white by its creases. */
export function outstanding({ unlike, steps }: CopperLook): Plane {
  return { ...unlike, values: unlike.values.map((v, k) => Math.min(1, Math.hypot(v, steps[k]))) };
}
