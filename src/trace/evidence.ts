import type { Colour, Surroundings } from './contrast.ts';
import type { Ribbon } from './ribbon.ts';

/** Most that one sample may say for or against paper. */
const bound = 3;

/**
 * Shares of what tape looks like: as the strip does round here; anything at all, for tape is a creased mirror; burnt out.
 * Set by eye on generated and path-traced strips.
 */
const asHere = 0.75;
const anything = 0.2;
const burntOut = 0.05;
/** L* by a* by b* over which anything may lie, and over which a burnt-out facet does, with the L* from which it is one. */
const wholeRange = 100 * 30 * 40;
const burntRange = 5 * 10 * 10;
const burntFrom = 95;

/**
 * Log-likelihood ratio, paper against copper, of one sample: how likely the paper beside the strip looks so, against how
 * likely tape does. What is lighter than the paper is no paper, however unlike the strip it is. A blurred cut is a
 * mixture, so a sample part of the way to paper counts little for tape.
 */
export function paperEvidence(ribbon: Ribbon, n: number, around: Surroundings): number {
  const { copper, left, right, halo } = around;
  const ofPaper = Math.max(
    left ? density(ribbon, n, left, halo) : 0,
    right ? density(ribbon, n, right, halo) : 0,
  );
  const { L } = ribbon;
  const burnt = L[n] > burntFrom ? burntOut / burntRange : 0;
  const ofCopper = asHere * density(ribbon, n, copper) + anything / wholeRange + burnt;
  return Math.max(-bound, Math.min(bound, Math.log((ofPaper + 1e-12) / ofCopper)));
}

/** Normal density of a sample's colour, each axis by itself; any lightness from the mean to `halo` over it counts as the mean. */
function density({ L, a, b }: Ribbon, n: number, { mean, spread }: Colour, halo = 0): number {
  const lighter = L[n] - mean[0];
  const offL = lighter > 0 ? Math.max(0, lighter - halo) : lighter;
  const off =
    (offL / spread[0]) ** 2 + ((a[n] - mean[1]) / spread[1]) ** 2 + ((b[n] - mean[2]) / spread[2]) ** 2;
  return Math.exp(-off / 2) / (15.75 * spread[0] * spread[1] * spread[2]);
}
