import type { SquaredSheet } from '../sheet/index.ts';
import type { Masks } from './classical.ts';
import { sumOdds } from './sumOdds.ts';
import { dropSpecks, fillHoles } from './specks.ts';
import type { LearnedMap } from './types.ts';

/** Chances, 0..255: copper by itself; copper where the classical mask agrees; copper that a bridge may lean on. */
const sure = 128;
const agreed = 85;
const leaning = 80;
/** One mask of two: the trained nets lead, the classical mask settles what they leave open. */
export function fuseLearned(sheet: SquaredSheet, seen: Masks, learned: LearnedMap): Masks {
  const { width, height, pxPerMm } = sheet;
  const strict = new Uint8Array(width * height);
  const held = new Uint8Array(width * height);
  const copper = sumOdds(learned.copper, seen.likelihood);
  for (let k = 0; k < strict.length; k++) {
    const chance = copper[k];
    if (chance < leaning) continue;
    const other = learned.lamp[k] >= sure || learned.cell[k] >= sure;
    if (other && chance < sure) continue;
    if (chance >= sure || (chance >= agreed && seen.strict[k])) strict[k] = 1;
    held[k] = strict[k] | seen.filled[k];
  }
  const least = 3 * pxPerMm ** 2;
  const kept = dropSpecks(held, width, height, least);
  const filled = fillHoles(kept, width, height, 4 * pxPerMm ** 2);
  for (let k = 0; k < filled.length; k++) {
    if (!filled[k] || kept[k]) continue;
    if (learned.lamp[k] >= sure || learned.cell[k] >= sure) filled[k] = 0;
  }
  return { strict: dropSpecks(strict, width, height, least), filled, likelihood: copper };
}
