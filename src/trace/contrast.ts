import { middleOf } from '../geometry/index.ts';
import type { Ribbon } from './ribbon.ts';

/** Mean and spread of L*, a*, b* in a window of a ribbon. */
export interface Colour {
  mean: [number, number, number];
  spread: [number, number, number];
}

/** Least spread that is believed of paper and of copper: noise, grain and JPEG leave about this much. */
const paperFloor = [2.5, 1.5, 1.5] as const;
const copperFloor = [6, 2.5, 2.5] as const;

/** Robust colour (median, 1.48 MAD) of the picked samples; undefined when there are too few to tell. */
export function colourOf(
  { L, a, b }: Ribbon,
  picked: readonly number[],
  floor: readonly number[],
  least = 12,
): Colour | undefined {
  if (picked.length < least) return undefined;
  const colour: Colour = { mean: [0, 0, 0], spread: [0, 0, 0] };
  const values = new Float32Array(picked.length);
  [L, a, b].forEach((plane, c) => {
    for (let n = 0; n < values.length; n++) values[n] = plane[picked[n]];
    const middle = middleOf(values);
    for (let n = 0; n < values.length; n++) values[n] = Math.abs(values[n] - middle);
    colour.mean[c] = middle;
    colour.spread[c] = Math.max(floor[c], 1.48 * middleOf(values));
  });
  return colour;
}

/** What the strip and the paper on its two sides look like round row s. */
export interface Surroundings {
  copper: Colour;
  left: Colour | undefined;
  right: Colour | undefined;
  /** How much lighter (L*) a sharpened picture shows the paper along the strip's border, and so in a fine cut. */
  halo: number;
}

/** Least and most that is believed of a halo, L*: under it noise, over it a glint. */
const haloBounds = [2, 14] as const;

/** Median over rows of how much the lightest sample just outside the strip's border is lighter than the paper. */
function haloOf(ribbon: Ribbon, rows: readonly number[], half: number, blur: number, paper: number): number {
  const { across, L } = ribbon;
  const middle = (across - 1) / 2;
  const lightest = rows.flatMap((r) =>
    [-1, 1].map((side) => {
      let most = 0;
      for (let off = half; off <= half + blur + 1; off++)
        most = Math.max(most, L[r * across + middle + side * off]);
      return most - paper;
    }),
  );
  const [least, most] = haloBounds;
  const halo = lightest.sort((a, b) => a - b)[lightest.length >> 1] - least;
  return Math.min(most, Math.max(0, halo));
}

/**
 * @param half half the strip's width, samples
 * @param reach rows looked at before and after row s
 * @param blur samples next to the border that belong to neither side
 */
export function surroundings(
  ribbon: Ribbon,
  s: number,
  half: number,
  reach: number,
  blur: number,
): Surroundings | undefined {
  const { across, length, piece } = ribbon;
  const middle = (across - 1) / 2;
  const inner: number[] = [];
  const left: number[] = [];
  const right: number[] = [];
  const rows: number[] = [];
  for (let r = Math.max(0, s - reach); r <= Math.min(length - 1, s + reach); r += 4) {
    rows.push(r);
    for (let t = 0; t < across; t += 2) {
      const n = r * across + t;
      const off = t - middle;
      if (Math.abs(off) <= half - blur) inner.push(n);
      else if (Math.abs(off) >= half + blur && piece[n] === 0) (off < 0 ? left : right).push(n);
    }
  }
  const copper = colourOf(ribbon, inner, copperFloor);
  if (!copper) return undefined;
  const [onLeft, onRight] = [left, right].map((picked) => colourOf(ribbon, picked, paperFloor));
  const paper = onLeft ?? onRight;
  const halo = paper ? haloOf(ribbon, rows, half, blur, paper.mean[0]) : 0;
  return { copper, left: onLeft, right: onRight, halo };
}
