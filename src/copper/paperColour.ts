import { middleOf } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { linearOf } from './lab.ts';

/** Linear light, 0..1. */
export type Rgb = [number, number, number];

/** Paper in shade has its light taken from all colours alike: down to this share, and this unevenly. */
const shade = [0.15, 1.2] as const;
const mostUneven = 1.2;

/** The colour of a pixel of the sheet. */
export function rgbAt({ rgb }: SquaredSheet, k: number): Rgb {
  return [linearOf[rgb[3 * k]], linearOf[rgb[3 * k + 1]], linearOf[rgb[3 * k + 2]]];
}

/** The middle colour of some pixels of the sheet, each of the three taken by itself. */
export function medianRgb(sheet: SquaredSheet, places: readonly number[]): Rgb {
  return [0, 1, 2].map((c) => {
    const lights = new Float64Array(places.length);
    for (let n = 0; n < lights.length; n++) lights[n] = linearOf[sheet.rgb[3 * places[n] + c]];
    return middleOf(lights);
  }) as Rgb;
}

/** Whether a colour is the paper's under less light. */
export function isShaded(rgb: Rgb, paper: Rgb): boolean {
  const [least, most] = sharesOf(rgb, paper);
  return least >= shade[0] && most <= shade[1] && most <= mostUneven * least;
}

/** The least and the most that is left of the paper's light in one of the three colours. */
export function sharesOf(rgb: Rgb, paper: Rgb): [number, number] {
  const r = rgb[0] / Math.max(1e-3, paper[0]);
  const g = rgb[1] / Math.max(1e-3, paper[1]);
  const b = rgb[2] / Math.max(1e-3, paper[2]);
  return [Math.min(r, g, b), Math.max(r, g, b)];
}
