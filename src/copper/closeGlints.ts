import type { SquaredSheet } from '../sheet/index.ts';
import { components } from './components.ts';
import { rootOf } from './lab.ts';
import { closing } from './learned/thinGaps.ts';
import type { CopperMask } from './types.ts';

/** Half the widest opening that is looked into, mm. */
const reachMm = 0.9;
/** What is lighter than the paper round it by this much L*, or by this many of its own spreads, is no paper. */
const lighter = 4.5;
const spreads = 3;
/** Over this L* the picture is nearly burnt out: paper and glint look alike there. */
const burnt = 97;
/** Paper is looked for within this distance of an opening, mm. */
const roundMm = 5;
/** Likelihood, 0..255, under which the net is sure that no copper is there, whatever shines. */
const surelyNone = 50;
/** The blur of the picture reaches so far beyond a glint, mm. */
const blurMm = 0.2;

/**
 * Closes openings in the copper that are lighter than the paper beside them: nothing shines brighter than lit paper but
 * a mirror, so there the tape runs on and mirrors the lamp. A cut shows the paper itself and stays open.
 * @param hidden places that something lies on: what shines there is no tape
 */
export function closeGlints(
  mask: CopperMask,
  sheet: SquaredSheet,
  hidden: (x: number, y: number) => boolean,
): CopperMask {
  if (mask.by !== 'learned') return mask;
  const { width, height, pxPerMm, originMm } = mask;
  const maybe = (k: number): boolean =>
    mask.likelihood[k] >= surelyNone &&
    !hidden(
      originMm[0] + ((k % width) + 0.5) / pxPerMm,
      originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm,
    );
  const shut = closing(
    mask.filled.map((v) => 255 * v),
    width,
    height,
    Math.round(reachMm * pxPerMm),
  );
  const open = Uint8Array.from(mask.filled, (v, k) => (!v && shut[k] ? 1 : 0));
  const { labels, count } = components(open, width, height, 8);
  const members: number[][] = Array.from({ length: count + 1 }, () => []);
  for (let k = 0; k < labels.length; k++) if (labels[k]) members[labels[k]].push(k);
  const filled = mask.filled.slice();
  for (const opening of members) {
    if (opening.length === 0) continue;
    const glint = glintIn(opening, shut, sheet).filter(maybe);
    grow(glint, open, width, Math.round(blurMm * pxPerMm)).forEach((k) => (filled[k] = 1));
  }
  return { ...mask, filled };
}

/** The pixels of an opening that are lighter than the paper round it. */
function glintIn(opening: readonly number[], shut: Uint8Array, sheet: SquaredSheet): number[] {
  const light = opening.filter((k) => lightness(sheet, k) > 60);
  if (light.length === 0) return [];
  const paper = paperRound(opening, shut, sheet);
  if (!paper) return [];
  const least = Math.min(burnt, paper.middle + Math.max(lighter, spreads * paper.spread));
  if (paper.middle + 2 > least) return [];
  return light.filter((k) => lightness(sheet, k) > least);
}

/**
 * Median lightness of what is no copper round an opening, and its spread; undefined where too little shows. A sharpened
 * picture shows paper lighter along the tape's border, and so in a cut: where it does that border is the measure.
 */
function paperRound(
  opening: readonly number[],
  shut: Uint8Array,
  sheet: SquaredSheet,
): { middle: number; spread: number } | undefined {
  const { width, height, pxPerMm } = sheet;
  const reach = Math.round(roundMm * pxPerMm);
  let [i0, i1, j0, j1] = [width, 0, height, 0];
  for (const k of opening) {
    const i = k % width;
    const j = (k - i) / width;
    [i0, i1] = [Math.min(i0, i), Math.max(i1, i)];
    [j0, j1] = [Math.min(j0, j), Math.max(j1, j)];
  }
  const seen: number[] = [];
  const rim: number[] = [];
  const step = 2;
  const near = Math.round(blurMm * pxPerMm);
  for (let j = Math.max(0, j0 - reach); j <= Math.min(height - 1, j1 + reach); j += step) {
    for (let i = Math.max(0, i0 - reach); i <= Math.min(width - 1, i1 + reach); i += step) {
      const k = j * width + i;
      if (shut[k]) continue;
      const beside = shut[k - near] || shut[k + near] || shut[k - near * width] || shut[k + near * width];
      (beside ? rim : seen).push(lightness(sheet, k));
    }
  }
  if (seen.length < 40) return undefined;
  const middle = medianOf(seen);
  const spread = 1.48 * medianOf(seen.map((v) => Math.abs(v - middle)));
  return { middle: rim.length < 20 ? middle : Math.max(middle, medianOf(rim)), spread };
}

const medianOf = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1];

const root = new Float32Array(3);

/** L* of a pixel. */
function lightness({ rgb }: SquaredSheet, k: number): number {
  rootOf(rgb, 3 * k, root);
  return 116 * root[1] - 16;
}

/** The pixels and what of `within` lies at most `steps` from them. */
function grow(from: readonly number[], within: Uint8Array, width: number, steps: number): Set<number> {
  const all = new Set(from);
  let front = [...from];
  for (let step = 0; step < steps; step++) {
    const next: number[] = [];
    for (const k of front) {
      for (const near of [k - 1, k + 1, k - width, k + width]) {
        if (!within[near] || all.has(near)) continue;
        all.add(near);
        next.push(near);
      }
    }
    front = next;
  }
  return all;
}
