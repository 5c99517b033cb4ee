import type { SquaredSheet } from '../../sheet/index.ts';
import { regions } from './regions.ts';
import type { Region } from './regions.ts';
import type { SuggestedLamp } from './types.ts';

/** Chance from which a pixel may be lamp, 0..255: the two looks of the net often agree on half a body only. */
const leastChance = 110;
/** Bodies in use, mm and mm2: from the smallest surface-mounted to a 5 mm lens with its rim; common practice, no source. */
const leastMm2 = 3;
const mostMm = 11;
/** Pads lie this far from a body's middle at least, mm: the map shows little more than the body's core. */
const leastReach = 2;
/** A patch as large as this is as sure as its chance; a smaller one less, mm2. */
const fullMm2 = 8;

/** Lamp bodies on a squared sheet, surest first. @param map chance of each pixel to be lamp, 0..255 */
export function findLamps(sheet: SquaredSheet, map: Uint8Array): SuggestedLamp[] {
  return regions(map, sheet, leastChance, leastMm2)
    .filter(({ lengthMm }) => lengthMm <= mostMm)
    .map(lampOf)
    .sort((a, b) => b.certainty - a.certainty);
}

function lampOf({ at: [x, y], lengthMm, angle, chance, areaMm2 }: Region): SuggestedLamp {
  const reach = Math.max(leastReach, 0.4 * lengthMm);
  const [dx, dy] = [reach * Math.cos(angle), reach * Math.sin(angle)];
  return {
    plus: [x - dx, y - dy],
    minus: [x + dx, y + dy],
    certainty: chance * Math.min(1, 0.6 + (0.4 * areaMm2) / fullMm2),
  };
}
