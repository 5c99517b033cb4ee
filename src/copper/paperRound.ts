import type { SquaredSheet } from '../sheet/index.ts';
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

/**
 * @param place pixels of the sheet
 * @param copper what cannot be paper; row-major
 * @returns undefined where too little paper shows
 */
export function paperRound(
  place: readonly number[],
  copper: Uint8Array,
  sheet: SquaredSheet,
): PaperRound | undefined {
  const { width, height, pxPerMm } = sheet;
  const reach = Math.round(roundMm * pxPerMm);
  let [i0, i1, j0, j1] = [width, 0, height, 0];
  for (const k of place) {
    const i = k % width;
    const j = (k - i) / width;
    [i0, i1] = [Math.min(i0, i), Math.max(i1, i)];
    [j0, j1] = [Math.min(j0, j), Math.max(j1, j)];
  }
  const seen: Lab[] = [];
  const rim: number[] = [];
  const step = 2;
  const near = Math.round(rimMm * pxPerMm);
  for (let j = Math.max(0, j0 - reach); j <= Math.min(height - 1, j1 + reach); j += step) {
    for (let i = Math.max(0, i0 - reach); i <= Math.min(width - 1, i1 + reach); i += step) {
      const k = j * width + i;
      if (copper[k]) continue;
      const beside =
        copper[k - near] || copper[k + near] || copper[k - near * width] || copper[k + near * width];
      if (beside) rim.push(labAt(sheet, k)[0]);
      else seen.push(labAt(sheet, k));
    }
  }
  if (seen.length < 40) return undefined;
  const [L, a, b] = [0, 1, 2].map((c) => medianOf(seen.map((lab) => lab[c])));
  const spread = 1.48 * medianOf(seen.map((lab) => Math.abs(lab[0] - L)));
  return { L, a, b, spread, rim: rim.length < 20 ? L : Math.max(L, medianOf(rim)) };
}

export type Lab = readonly [number, number, number];

const root = new Float32Array(3);

/** L*, a*, b* of a pixel. */
export function labAt({ rgb }: SquaredSheet, k: number): Lab {
  rootOf(rgb, 3 * k, root);
  return [116 * root[1] - 16, 500 * (root[0] - root[1]), 200 * (root[1] - root[2])];
}

const medianOf = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1];
