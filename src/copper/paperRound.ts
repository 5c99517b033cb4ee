import type { SquaredSheet } from '../sheet/index.ts';
import { middleOf } from '../geometry/index.ts';
import { rootOf } from './lab.ts';

/** What is no copper round a place: medians and spread of L*, medians of a* and b*. */
export interface PaperRound {
  L: number;
  a: number;
  b: number;
  /** 1.48 median absolute deviations of L*. */
  spread: number;
  /** L* along the copper's border: lighter where the picture is sharpened, and so in a cut. */
  rim: number;
}

/** Paper is looked for within this distance, mm, and its rim this near to the copper. */
const roundMm = 5;
const rimMm = 0.2;
/** Enough places for a median. */
const places = 8000;

/**
 * @param place pixels of the sheet, in the order of the picture; at least one
 * @param copper what cannot be paper; row-major
 * @returns undefined where too little paper shows
 */
export function paperRound(
  place: Int32Array,
  copper: Uint8Array,
  sheet: SquaredSheet,
): PaperRound | undefined {
  const { width, pxPerMm } = sheet;
  const { i0, i1, j0, j1 } = boxRound(place, sheet, roundMm);
  const step = Math.max(2, Math.ceil(Math.sqrt(((i1 - i0) * (j1 - j0)) / places)));
  const near = Math.round(rimMm * pxPerMm);
  const seen: number[] = [];
  const rim: number[] = [];
  for (let j = j0; j <= j1; j += step) {
    for (let k = j * width + i0; k <= j * width + i1; k += step) {
      if (copper[k]) continue;
      const beside =
        copper[k - near] || copper[k + near] || copper[k - near * width] || copper[k + near * width];
      (beside ? rim : seen).push(k);
    }
  }
  if (seen.length < 40) return undefined;
  const labs = labsAt(sheet, seen);
  // The lightness is wanted again for its spread.
  const [L, a, b] = [middleOf(labs.L.slice()), middleOf(labs.a), middleOf(labs.b)];
  for (let n = 0; n < seen.length; n++) labs.L[n] = Math.abs(labs.L[n] - L);
  const spread = 1.48 * middleOf(labs.L);
  const rimL = rim.length < 20 ? L : middleOf(labsAt(sheet, rim).L);
  return { L, a, b, spread, rim: Math.max(L, rimL) };
}

/** The pixels within reach of a place, both ends counted. @param place in the order of the picture; at least one */
export function boxRound(
  place: Int32Array,
  { width, height, pxPerMm }: Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm'>,
  reachMm: number,
) {
  const reach = Math.round(reachMm * pxPerMm);
  let left = width;
  let right = 0;
  for (const k of place) {
    const i = k % width;
    if (i < left) left = i;
    if (i > right) right = i;
  }
  const top = Math.floor(place[0] / width);
  const bottom = Math.floor(place[place.length - 1] / width);
  return {
    i0: Math.max(0, left - reach),
    i1: Math.min(width - 1, right + reach),
    j0: Math.max(0, top - reach),
    j1: Math.min(height - 1, bottom + reach),
  };
}

export type Lab = readonly [number, number, number];

const root = new Float32Array(3);

/** L*, a*, b* of a pixel. */
export function labAt({ rgb }: SquaredSheet, k: number): Lab {
  rootOf(rgb, 3 * k, root);
  return [116 * root[1] - 16, 500 * (root[0] - root[1]), 200 * (root[1] - root[2])];
}

/** The same of many pixels, a plane each. */
function labsAt({ rgb }: SquaredSheet, pixels: readonly number[]) {
  const [L, a, b] = [0, 1, 2].map(() => new Float64Array(pixels.length));
  for (let n = 0; n < pixels.length; n++) {
    rootOf(rgb, 3 * pixels[n], root);
    L[n] = 116 * root[1] - 16;
    a[n] = 500 * (root[0] - root[1]);
    b[n] = 200 * (root[1] - root[2]);
  }
  return { L, a, b };
}
