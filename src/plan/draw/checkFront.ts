import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { components } from '../../copper/index.ts';
import { otsu } from '../compare/otsu.ts';

/** A light hole seen in the front, on the base's own frame (the back of the front is its mirror image). */
export interface SeenHole {
  at: Point;
  diameterMm: number;
}

export interface FrontMiss {
  lamp: string;
  /** The hole nearest the lamp; undefined where none lies within reach. */
  hole?: SeenHole;
  missMm?: number;
  /** A placement error of a millimetre hides much of the light (common practice). */
  ok: boolean;
}

const LEAST_MM = 0.8;
const MOST_MM = 8;
/** Area over that of the round of the same extent: below this it is a scratch or a corner, not a hole. */
const LEAST_FILL = 0.55;
const REACH_MM = 12;
const ALLOWED_MM = 1;

/** Round spots much darker (a dark table) or lighter (a window behind) than the paper round them. */
export function holesIn(sheet: SquaredSheet, mirrored: boolean): SeenHole[] {
  const { width, height, pxPerMm, originMm, rgb, baseMm } = sheet;
  const grey = new Uint8Array(width * height);
  for (let k = 0; k < grey.length; k++) grey[k] = (rgb[3 * k] + rgb[3 * k + 1] + rgb[3 * k + 2]) / 3;
  const threshold = otsu(grey);
  let dark = 0;
  for (const v of grey) if (v <= threshold) dark++;
  const spotsDark = dark < grey.length / 2;
  const on = grey.map((v) => (v <= threshold === spotsDark ? 1 : 0));
  const { labels, count } = components(on, width, height, 8);
  const sums = Array.from({ length: count + 1 }, () => ({
    n: 0,
    x: 0,
    y: 0,
    x0: width,
    x1: 0,
    y0: height,
    y1: 0,
  }));
  for (let k = 0; k < labels.length; k++) {
    if (!labels[k]) continue;
    const s = sums[labels[k]];
    const x = k % width;
    const y = (k - x) / width;
    s.n++;
    s.x += x + 0.5;
    s.y += y + 0.5;
    s.x0 = Math.min(s.x0, x);
    s.x1 = Math.max(s.x1, x + 1);
    s.y0 = Math.min(s.y0, y);
    s.y1 = Math.max(s.y1, y + 1);
  }
  return sums
    .filter((s) => {
      const long = Math.max(s.x1 - s.x0, s.y1 - s.y0);
      const size = long / pxPerMm;
      return (
        s.n > 0 && size >= LEAST_MM && size <= MOST_MM && s.n / ((Math.PI / 4) * long ** 2) >= LEAST_FILL
      );
    })
    .map((s) => {
      const x = originMm[0] + s.x / s.n / pxPerMm;
      return {
        at: [mirrored ? baseMm.width - x : x, originMm[1] + s.y / s.n / pxPerMm] as Point,
        diameterMm: (2 * Math.sqrt(s.n / Math.PI)) / pxPerMm,
      };
    });
}

/**
 * Hole centres against lamps.
 * @param sheet the front's back squared up, or its face
 * @param side which side was photographed; the back is mirrored left to right
 */
export function checkFront(sheet: SquaredSheet, card: Card, side: 'back' | 'face' = 'back'): FrontMiss[] {
  const holes = holesIn(sheet, side === 'back');
  return card.lamps.map(({ id, plus, minus }) => {
    const at: Point = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
    const nearest = holes
      .map((hole) => ({ hole, d: Math.hypot(hole.at[0] - at[0], hole.at[1] - at[1]) }))
      .sort((a, b) => a.d - b.d)[0];
    if (!nearest || nearest.d > REACH_MM) return { lamp: id, ok: false };
    return { lamp: id, hole: nearest.hole, missMm: nearest.d, ok: nearest.d <= ALLOWED_MM };
  });
}
