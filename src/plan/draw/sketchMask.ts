import { boxMean } from '../../copper/boxMean.ts';
import { dropSpecks } from '../../copper/specks.ts';
import { grow } from '../../copper/grow.ts';
import type { CopperMask } from '../../copper/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';

/** The window within which paper is taken as evenly lit. */
const WINDOW_MM = 12;
/** Darker than the window's mean by this share is a stroke. */
const DARKER = 0.15;
/** A pencil line is broadened by this on either side, so that its centre-line is followed like that of tape. */
const BROADEN_MM = 0.6;
/** A stroke shorter than this is a letter, a speck or a sign. */
const LEAST_MM2 = 4;
/** The sheet's edge and its shadow. */
const RIM_MM = 1.5;

/**
 * Strokes of pencil or pen on a squared-up sheet, as a mask like that of copper.
 * @source the threshold: Bradley and Roth, "Adaptive thresholding using the integral image", J. Graphics Tools 12 (2007)
 */
export function sketchMask(sheet: SquaredSheet): CopperMask {
  const { width, height, pxPerMm, originMm, baseMm, rgb } = sheet;
  const grey = new Float32Array(width * height);
  for (let k = 0; k < grey.length; k++) grey[k] = rgb[3 * k] + rgb[3 * k + 1] + rgb[3 * k + 2];
  const mean = boxMean(grey, width, height, Math.round((WINDOW_MM / 2) * pxPerMm));
  const dark = Uint8Array.from(grey, (v, k) => (v < (1 - DARKER) * mean[k] ? 1 : 0));
  clearRim(dark, sheet);
  const broad = grow(dark, width, height, BROADEN_MM * pxPerMm);
  const filled = dropSpecks(broad, width, height, LEAST_MM2 * pxPerMm ** 2);
  return {
    width,
    height,
    pxPerMm,
    originMm,
    baseMm,
    filled,
    strict: filled,
    likelihood: filled.map((v) => 255 * v),
    readable: 1,
    troubles: [],
    by: 'given',
  };
}

function clearRim(dark: Uint8Array, { width, height, pxPerMm, originMm, baseMm }: SquaredSheet): void {
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const [x, y] = [originMm[0] + i / pxPerMm, originMm[1] + j / pxPerMm];
      if (Math.min(x, y, baseMm.width - x, baseMm.height - y) < RIM_MM) dark[k] = 0;
    }
  }
}
