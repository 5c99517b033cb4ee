import type { SquaredSheet } from '../sheet/index.ts';
import { rootOf } from './lab.ts';
import type { PaperField } from './paper.ts';

/** Below this cube root (about 1.3 % of white) paper is too dark to divide by; noise would pass for colour. */
export const darkestPaper = 0.24;

/** Scores are kept as bytes, this many to one unit of paper's own scatter. */
export const scoreUnit = 16;

/** How far a colour, as L* - 100, a*, b* against the paper, lies from paper, in units of paper's own scatter. */
export function unlikePaper(dL: number, a: number, b: number): number {
  const [x, y, z] = [dL / 7, a / 3.5, b / 4.5];
  return Math.sqrt(x * x + y * y + z * z);
}

/**
 * How unlike the paper beside it each pixel is, in `1 / scoreUnit`, 0 where it is not asked.
 * @param flank paper colour at each small pixel
 * @param near 1 at each small pixel that is asked
 * @param shrink side of a small pixel
 */
export function scoresNear(
  sheet: SquaredSheet,
  flank: PaperField,
  near: Uint8Array,
  shrink: number,
): Uint8Array {
  const { width, height, rgb } = sheet;
  const scores = new Uint8Array(width * height);
  const root = new Float32Array(3);
  for (let j = 0; j < height; j++) {
    const row = Math.min(flank.rows - 1, Math.floor(j / shrink)) * flank.columns;
    for (let c = 0; c < flank.columns; c++) {
      const n = row + c;
      if (!near[n]) continue;
      const gx = 1 / Math.max(darkestPaper, flank.fx[n]);
      const gy = 1 / Math.max(darkestPaper, flank.fy[n]);
      const gz = 1 / Math.max(darkestPaper, flank.fz[n]);
      const end = c === flank.columns - 1 ? width : (c + 1) * shrink;
      for (let k = j * width + c * shrink; k < j * width + end; k++) {
        rootOf(rgb, 3 * k, root);
        const x = root[0] * gx;
        const y = root[1] * gy;
        const z = root[2] * gz;
        const score = unlikePaper(116 * (y - 1), 500 * (x - y), 200 * (y - z));
        scores[k] = Math.min(255, score * scoreUnit);
      }
    }
  }
  return scores;
}
