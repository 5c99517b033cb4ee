import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Suggested } from '../suggest/index.ts';
import { middleBy } from './middleBy.ts';
import type { Measured } from './tapeWidth.ts';

const leastLamps = 3;
const leastCertain = 0.5;
/** Lamps closer together than this, mm, measure too little. */
const leastSpread = 12;
/** Of the distances seen and stated, in order, the middle half agree within this share, else they are other lamps. */
const mostApart = 0.05;

/**
 * How far the card's lamps lie from each other, in the middle, as seen and as the card has them. It holds whichever way round
 * the sheet lies, and one lamp that is set amiss moves it little.
 * @returns undefined where not just as many lamps are seen as the card has on its base, or too few, or others
 */
export function lampSpread({ lamps, flaps, patches }: Card, suggested: Suggested): Measured | undefined {
  const elsewhere = new Set([...flaps, ...patches].map(({ id }) => id));
  const own = lamps.filter(({ on }) => !elsewhere.has(on));
  const seen = suggested.lamps.filter(({ certainty }) => certainty >= leastCertain);
  if (own.length < leastLamps || seen.length !== own.length) return undefined;
  const stated = distances(own.map(middleOf));
  const ratios = distances(seen.map(middleOf)).map((d, i) => ({ value: d / stated[i], weight: stated[i] }));
  const times = middleBy(ratios);
  const statedMm = stated.reduce((sum, d) => sum + d, 0) / stated.length;
  if (!times || statedMm < leastSpread || times.upper - times.lower > mostApart * times.middle)
    return undefined;
  return { seenMm: times.middle * statedMm, statedMm };
}

const middleOf = ({ plus, minus }: { plus: Point; minus: Point }): Point => [
  (plus[0] + minus[0]) / 2,
  (plus[1] + minus[1]) / 2,
];

/** Between each two of the places, rising. */
function distances(places: Point[]): number[] {
  return places
    .flatMap(([x, y], i) => places.slice(i + 1).map(([u, v]) => Math.hypot(u - x, v - y)))
    .sort((a, b) => a - b);
}
