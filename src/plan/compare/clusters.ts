import type { PixelBox } from './bitmap.ts';

/** A connected set of pixels. */
export interface Part {
  box: PixelBox;
  /** Indices into the row-major picture. */
  pixels: number[];
}

/**
 * Parts of scattered pixels, those at most `reach` columns and rows apart being one.
 * @param pixels indices into the row-major picture
 */
export function clusters(pixels: number[], width: number, height: number, reach: number): Part[] {
  const waiting = new Uint8Array(width * height);
  for (const i of pixels) waiting[i] = 1;
  const parts: Part[] = [];
  for (const seed of pixels) {
    if (!waiting[seed]) continue;
    waiting[seed] = 0;
    const own = [seed];
    const box = { x0: width, y0: height, x1: 0, y1: 0 };
    for (let k = 0; k < own.length; k++) {
      const x = own[k] % width;
      const y = (own[k] - x) / width;
      widen(box, x, y);
      const x1 = Math.min(width - 1, x + reach);
      const y1 = Math.min(height - 1, y + reach);
      for (let j = Math.max(0, y - reach); j <= y1; j++) {
        for (let n = j * width + Math.max(0, x - reach); n <= j * width + x1; n++) {
          if (!waiting[n]) continue;
          waiting[n] = 0;
          own.push(n);
        }
      }
    }
    parts.push({ box, pixels: own });
  }
  return parts;
}

/** Makes a box hold a pixel. */
export function widen(box: PixelBox, x: number, y: number): void {
  if (x < box.x0) box.x0 = x;
  if (y < box.y0) box.y0 = y;
  if (x >= box.x1) box.x1 = x + 1;
  if (y >= box.y1) box.y1 = y + 1;
}
