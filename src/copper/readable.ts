import type { Signs } from './signs.ts';
import type { LearnedMap, Trouble } from './types.ts';

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

/**
 * How far the net's mask can be trusted, with the classical one as witness.
 * @param signs of the fused mask
 * @param agreement intersection over union of the two masks, 0..1
 */
export function readTogether(signs: Signs, learned: LearnedMap, agreement: number): Reading {
  const { copper } = learned;
  if (signs.covered < 0.002) return { readable: 0.3, troubles: ['no-copper'] };
  let maybe = 0;
  let between = 0;
  for (let k = 0; k < copper.length; k++) {
    if (copper[k] > 64) maybe++;
    if (copper[k] > 64 && copper[k] < 192) between++;
  }
  const unsure = maybe ? between / maybe : 1;
  const readable = limited(0.75 * signs.shapely + 0.35 * agreement - 1.2 * Math.max(0, unsure - 0.15));
  if (readable >= 0.8) return { readable, troubles: [] };
  const troubles = troublesOf({ ...signs, doubtful: unsure > 0.2 ? 1 : 0 });
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
