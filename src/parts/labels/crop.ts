import type { GreyPicture } from '../../engine/ocr.ts';
import type { Box } from '../../geometry/index.ts';

/** How large a line is cut out, and how much paper is left round it, px. */
export interface Cut {
  linePx: number;
  padPx: number;
}

/**
 * The recogniser reads best when a line of capitals is 30 to 40 px high (its documentation). What it takes one picture of a
 * short name for it seldom takes another for: of 200 printed names it read 191 at the first size, 199 by three.
 */
export const cuts: readonly [Cut, Cut, Cut] = [
  { linePx: 36, padPx: 24 },
  { linePx: 30, padPx: 14 },
  { linePx: 48, padPx: 24 },
];

/**
 * Cuts a line of ink out of a grey sheet, scaled to the recogniser's liking, contrast stretched, padded with paper.
 *
 * @param boxPx pixel box on the sheet
 * @param upsideDown turned by 180 degrees
 */
export function cropLine(
  grey: Uint8Array,
  width: number,
  height: number,
  boxPx: Box,
  upsideDown: boolean,
  { linePx, padPx }: Cut = cuts[0],
): GreyPicture {
  const x0 = Math.max(0, Math.floor(boxPx.x0) - 2);
  const y0 = Math.max(0, Math.floor(boxPx.y0) - 2);
  const x1 = Math.min(width, Math.ceil(boxPx.x1) + 2);
  const y1 = Math.min(height, Math.ceil(boxPx.y1) + 2);
  const scale = linePx / Math.max(8, y1 - y0);
  const w = Math.max(1, Math.round((x1 - x0) * scale));
  const h = Math.max(1, Math.round((y1 - y0) * scale));
  const { dark, light } = range(grey, width, x0, y0, x1, y1);
  const out = { width: w + 2 * padPx, height: h + 2 * padPx };
  const picture = new Uint8Array(out.width * out.height).fill(255);
  for (let j = 0; j < h; j++) {
    for (let i = 0; i < w; i++) {
      const value = bilinear(grey, width, height, x0 + (i + 0.5) / scale - 0.5, y0 + (j + 0.5) / scale - 0.5);
      const stretched = Math.max(0, Math.min(255, ((value - dark) / (light - dark)) * 255));
      const at = upsideDown
        ? (h - 1 - j + padPx) * out.width + (w - 1 - i + padPx)
        : (j + padPx) * out.width + (i + padPx);
      picture[at] = stretched;
    }
  }
  return { ...out, grey: picture };
}

/** Darkest ink and lightest paper of a box, the outermost 5 % left out. */
function range(grey: Uint8Array, width: number, x0: number, y0: number, x1: number, y1: number) {
  const counts = new Int32Array(256);
  for (let y = y0; y < y1; y++) for (let x = x0; x < x1; x++) counts[grey[y * width + x]]++;
  const few = (x1 - x0) * (y1 - y0) * 0.05;
  let dark = 0;
  for (let n = 0; dark < 255 && (n += counts[dark]) < few; dark++);
  let light = 255;
  for (let n = 0; light > 0 && (n += counts[light]) < few; light--);
  return { dark, light: Math.max(light, dark + 1) };
}

function bilinear(grey: Uint8Array, width: number, height: number, x: number, y: number): number {
  const xc = Math.max(0, Math.min(width - 1.001, x));
  const yc = Math.max(0, Math.min(height - 1.001, y));
  const i = Math.floor(yc) * width + Math.floor(xc);
  const fx = xc - Math.floor(xc);
  const fy = yc - Math.floor(yc);
  const top = grey[i] * (1 - fx) + grey[i + 1] * fx;
  const bottom = grey[i + width] * (1 - fx) + grey[i + width + 1] * fx;
  return top * (1 - fy) + bottom * fy;
}
