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
/** With less than this for paper a sample says the most that it may for tape, whatever tape looks like here. */
const leastPaper = (Math.exp(-bound) * anything) / wholeRange - 1e-12;

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
  if (ofPaper < leastPaper) return -bound;
  const { L } = ribbon;
  const burnt = L[n] > burntFrom ? burntOut / burntRange : 0;
  const ofCopper = asHere * density(ribbon, n, copper) + anything / wholeRange + burnt;
  return Math.max(-bound, Math.min(bound, Math.log((ofPaper + 1e-12) / ofCopper)));
}

/** L* over the paper's that sharpening adds in a fine cut at least, and spreads of L* beyond which it is no paper. */
const fineHalo = 8;
const farOff = 3.5;
const rootTwoPi = 2.507;

/**
 * The same for a fine cut. A JPEG keeps colour at half its resolution (4:2:0), so that a cut of a few pixels shows the
 * paper's lightness in a colour anywhere between the paper's and the copper's; sharpening makes it lighter.
 * @source ITU-T T.81 (JPEG), subsampled components
 */
export function fineEvidence(ribbon: Ribbon, n: number, around: Surroundings): number {
  const { copper, left, right, halo } = around;
  const most = Math.max(halo, fineHalo);
  const ofPaper = Math.max(
    left ? fineDensity(ribbon, n, left, copper, most) : 0,
    right ? fineDensity(ribbon, n, right, copper, most) : 0,
  );
  if (ofPaper < leastPaper) return -bound;
  const burnt = ribbon.L[n] > burntFrom ? burntOut / burntRange : 0;
  const ofCopper = asHere * density(ribbon, n, copper) + anything / wholeRange + burnt;
  return Math.max(-bound, Math.min(bound, Math.log((ofPaper + 1e-12) / ofCopper)));
}

/** Density of a sample's colour along the way from paper's a*, b* to copper's, with paper's lightness; 0 far from it. */
function fineDensity(
  { L, a, b }: Ribbon,
  n: number,
  { mean, spread }: Colour,
  copper: Colour,
  halo: number,
): number {
  const lighter = L[n] - mean[0];
  const offL = (lighter > 0 ? Math.max(0, lighter - halo) : lighter) / spread[0];
  if (Math.abs(offL) > farOff) return 0;
  const [wayA, wayB] = [copper.mean[1] - mean[1], copper.mean[2] - mean[2]];
  const [offA, offB] = [a[n] - mean[1], b[n] - mean[2]];
  const length = Math.hypot(wayA, wayB) || 1;
  const share = Math.min(1, Math.max(0, (offA * wayA + offB * wayB) / length ** 2));
  const off = offL ** 2 + ((offA - share * wayA) / spread[1]) ** 2 + ((offB - share * wayB) / spread[2]) ** 2;
  const along = Math.max(length, rootTwoPi * spread[1]);
  return Math.exp(-off / 2) / (rootTwoPi ** 2 * spread[0] * spread[2] * along);
}

/** Normal density of a sample's colour, each axis by itself; any lightness from the mean to `halo` over it counts as the mean. */
function density({ L, a, b }: Ribbon, n: number, { mean, spread }: Colour, halo = 0): number {
  const lighter = L[n] - mean[0];
  const offL = lighter > 0 ? Math.max(0, lighter - halo) : lighter;
  const off =
    (offL / spread[0]) ** 2 + ((a[n] - mean[1]) / spread[1]) ** 2 + ((b[n] - mean[2]) / spread[2]) ** 2;
  return Math.exp(-off / 2) / (15.75 * spread[0] * spread[1] * spread[2]);
}
