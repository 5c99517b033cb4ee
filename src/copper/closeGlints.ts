import type { SquaredSheet } from '../sheet/index.ts';
import { components, membersOf } from './components.ts';
import { closeSquare } from './closeSquare.ts';
import { labAt, paperRound } from './paperRound.ts';
import type { CopperMask } from './types.ts';

/** Half the widest opening that is looked into, mm. */
const reachMm = 0.9;
/** What is lighter than the paper round it by this much L*, or by this many of its own spreads, is no paper. */
const lighter = 4.5;
const spreads = 3;
/** Over this L* the picture is nearly burnt out: paper and glint look alike there. */
const burnt = 97;
/**
 * Likelihood, 0..255, under which the net is sure that no copper is there: down to the first for what is lighter than paper,
 * down to the second for what is burnt out to white on paper that is not.
 */
const surelyNone = 50;
const neverAny = 1;
const white = 99;
/** An opening of which so much is no lighter than that, nor darker than paper by more than its shade, L*, shows the paper itself. */
const mostly = 0.75;
const shadeL = 12;
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
    mask.likelihood[k] >= neverAny &&
    !hidden(
      originMm[0] + ((k % width) + 0.5) / pxPerMm,
      originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm,
    );
  const shut = closeSquare(mask.filled, width, height, Math.round(reachMm * pxPerMm));
  const open = new Uint8Array(shut.length);
  for (let k = 0; k < open.length; k++) if (!mask.filled[k] && shut[k]) open[k] = 1;
  const filled = mask.filled.slice();
  for (const opening of membersOf(components(open, width, height, 8))) {
    const glint = glintIn(opening, maybe, mask.likelihood, shut, sheet);
    grow(glint, open, width, Math.round(blurMm * pxPerMm)).forEach((k) => (filled[k] = 1));
  }
  return { ...mask, filled };
}

/**
 * The pixels of an opening that are lighter than the paper round it. A sharpened picture shows paper lighter along the
 * tape's border, and so in a cut: that border is the measure.
 */
function glintIn(
  opening: Int32Array,
  maybe: (k: number) => boolean,
  likelihood: Uint8Array,
  shut: Uint8Array,
  sheet: SquaredSheet,
): Int32Array {
  const lightness = (k: number): number => labAt(sheet, k)[0];
  // The paper round is looked at only where something could come of it.
  const light = opening.filter((k) => lightness(k) > 60 && maybe(k));
  if (light.length === 0) return light;
  const paper = paperRound(opening, shut, sheet);
  if (!paper) return new Int32Array(0);
  const least = Math.min(burnt, paper.rim + Math.max(lighter, spreads * paper.spread));
  if (paper.rim + 2 > least) return new Int32Array(0);
  // Bright facets beside a slit blur into it; what lies between them is paper all the same.
  const plain = opening.filter((k) => lightness(k) > paper.rim - shadeL && lightness(k) <= least);
  if (plain.length >= mostly * opening.length) return new Int32Array(0);
  return light.filter((k) => lightness(k) > (likelihood[k] >= surelyNone ? least : white));
}

/** The pixels and what of `within` lies at most `steps` from them. */
function grow(from: Int32Array, within: Uint8Array, width: number, steps: number): Set<number> {
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
