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
  const colours = places.map((k) => rgbAt(sheet, k));
  return [0, 1, 2].map((c) => middleOf(Float64Array.from(colours, (rgb) => rgb[c]))) as Rgb;
}

/** Whether a colour is the paper's under less light. */
export function isShaded(rgb: Rgb, paper: Rgb): boolean {
  const [least, most] = sharesOf(rgb, paper);
  return least >= shade[0] && most <= shade[1] && most <= mostUneven * least;
}

/** The least and the most that is left of the paper's light in one of the three colours. */
export function sharesOf(rgb: Rgb, paper: Rgb): [number, number] {
  const shares = rgb.map((v, c) => v / Math.max(1e-3, paper[c]));
  return [Math.min(...shares), Math.max(...shares)];
}
