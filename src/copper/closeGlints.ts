import type { SquaredSheet } from '../sheet/index.ts';
import { components } from './components.ts';
import { closing } from './learned/thinGaps.ts';
import { labAt, paperRound } from './paperRound.ts';
import type { CopperMask } from './types.ts';

/** Half the widest opening that is looked into, mm. */
const reachMm = 0.9;
/** What is lighter than the paper round it by this much L*, or by this many of its own spreads, is no paper. */
const lighter = 4.5;
const spreads = 3;
/** Over this L* the picture is nearly burnt out: paper and glint look alike there. */
const burnt = 97;
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

/**
 * The pixels of an opening that are lighter than the paper round it. A sharpened picture shows paper lighter along the
 * tape's border, and so in a cut: that border is the measure.
 */
function glintIn(opening: readonly number[], shut: Uint8Array, sheet: SquaredSheet): number[] {
  const lightness = (k: number): number => labAt(sheet, k)[0];
  const light = opening.filter((k) => lightness(k) > 60);
  if (light.length === 0) return [];
  const paper = paperRound(opening, shut, sheet);
  if (!paper) return [];
  const least = Math.min(burnt, paper.rim + Math.max(lighter, spreads * paper.spread));
  if (paper.rim + 2 > least) return [];
  return light.filter((k) => lightness(k) > least);
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
