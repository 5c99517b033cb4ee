import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';

/** A patch of places that a map of chances calls one thing, as an ellipse of the same moments. */
export interface Region {
  at: Point;
  areaMm2: number;
  /** Full length and width of the rectangle with the same second moments, mm. */
  lengthMm: number;
  widthMm: number;
  /** Direction of its length, rad. */
  angle: number;
  /** Mean chance over it, 0..1. */
  chance: number;
}

type Frame = Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm' | 'originMm'>;

/** The connected patches where a map of chances 0..255 is at least `least`, of at least `leastMm2`. */
export function regions(map: Uint8Array, frame: Frame, least: number, leastMm2: number): Region[] {
  const seen = new Uint8Array(map.length);
  const found: Region[] = [];
  for (let start = 0; start < map.length; start++) {
    if (seen[start] || map[start] < least) continue;
    const pixels = flood(map, seen, start, frame, least);
    if (pixels.length >= leastMm2 * frame.pxPerMm ** 2) found.push(measure(pixels, map, frame));
  }
  return found;
}

function flood(map: Uint8Array, seen: Uint8Array, start: number, { width }: Frame, least: number): number[] {
  const pixels = [start];
  seen[start] = 1;
  for (let n = 0; n < pixels.length; n++) {
    const at = pixels[n];
    const x = at % width;
    const next = [at - width, at + width, x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1];
    for (const to of next) {
      if (to < 0 || to >= map.length || seen[to] || map[to] < least) continue;
      seen[to] = 1;
      pixels.push(to);
    }
  }
  return pixels;
}

function measure(pixels: number[], map: Uint8Array, { width, pxPerMm, originMm }: Frame): Region {
  const n = pixels.length;
  let [x, y, xx, xy, yy, chance] = [0, 0, 0, 0, 0, 0];
  for (const at of pixels) {
    const i = at % width;
    const j = Math.floor(at / width);
    x += i / n;
    y += j / n;
    chance += map[at] / 255 / n;
  }
  for (const at of pixels) {
    const dx = (at % width) - x;
    const dy = Math.floor(at / width) - y;
    xx += (dx * dx) / n;
    xy += (dx * dy) / n;
    yy += (dy * dy) / n;
  }
  const spread = Math.sqrt(((xx - yy) / 2) ** 2 + xy * xy);
  // A rectangle of length l has the variance l2/12 along it.
  const side = (variance: number) => Math.sqrt(12 * Math.max(0, variance) + 1) / pxPerMm;
  return {
    at: [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm],
    areaMm2: n / pxPerMm ** 2,
    lengthMm: side((xx + yy) / 2 + spread),
    widthMm: side((xx + yy) / 2 - spread),
    angle: 0.5 * Math.atan2(2 * xy, xx - yy),
    chance,
  };
}
