import type { Signs } from './signs.ts';
import type { Masks } from './classical.ts';
import type { Trouble } from './types.ts';

export interface Reading {
  readable: number;
  troubles: Trouble[];
}

const limited = (v: number): number => Math.max(0, Math.min(1, v));

/** How far the classical mask alone can be trusted. Set on path-traced photographs: a mask that is no strips is no mask. */
export function readAlone(signs: Signs): Reading {
  const { burnt, doubtful, shapely, covered } = signs;
  if (covered < 0.002) return { readable: 0.2, troubles: ['no-copper'] };
  const readable = limited(shapely - 0.5 * Math.max(0, doubtful - 0.2) - 0.5 * burnt);
  return { readable, troubles: readable < 0.8 ? troublesOf(signs) : [] };
}

/** What tells whether the mask of nets and classical eye is a reading at all; both 0..1. */
export interface Sureness {
  /** Mean likelihood of all that the mask takes for copper. */
  mean: number;
  /** Intersection over union with what the classical eye sees alone. */
  agreement: number;
}

export function meanLikelihood({ filled, likelihood }: Masks): number {
  let sum = 0;
  let count = 0;
  for (let k = 0; k < filled.length; k++) {
    if (!filled[k]) continue;
    sum += likelihood[k];
    count++;
  }
  return count ? sum / count / 255 : 0;
}

/**
 * Log-odds that the mask is one, of a mean likelihood over 0.75 and an agreement over one half. Made by
 * tests/copper/fit/fitReadable.ts; a bad mask that passes weighs as much as 4 needless warnings.
 */
export const readableWeights = { usual: -0.424, mean: 15.8, agreement: 4.19 };

/** A mask of which less is shaped like strips is none, however sure. */
const leastShapely = 0.2;

/** How far the net's mask can be trusted, with the classical one as witness. @param signs of the fused mask */
export function readTogether(signs: Signs, { mean, agreement }: Sureness): Reading {
  if (signs.covered < 0.002) return { readable: 0.3, troubles: ['no-copper'] };
  const { usual, ...weights } = readableWeights;
  const odds = usual + weights.mean * (mean - 0.75) + weights.agreement * (agreement - 0.5);
  const readable = Math.min(1, signs.shapely / leastShapely) / (1 + Math.exp(-odds));
  if (readable >= 0.8) return { readable, troubles: [] };
  const troubles = troublesOf({ ...signs, doubtful: mean < 0.8 ? 1 : 0 });
  if (agreement < 0.5) troubles.push('disagree');
  return { readable, troubles };
}

function troublesOf({ burnt, dark, doubtful, shapely }: Signs): Trouble[] {
  const troubles: Trouble[] = [];
  if (burnt > 0.05) troubles.push('burnt-out');
  if (dark > 0.2) troubles.push('too-dark');
  if (shapely < 0.6) troubles.push('odd-shapes');
  if (doubtful > 0.4 || !troubles.length) troubles.push('doubtful');
  return troubles;
}
