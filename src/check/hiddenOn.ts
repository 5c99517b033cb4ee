import type { Card } from '../card/index.ts';
import { cellOver } from '../net/covered.ts';
import { toSegment } from '../net/distance.ts';

/** Within this of the line between its pads a lamp may lie or shine, mm. */
const lampMm = 3;

/** Where the card has a lamp or the cell, its rim and shine included: mm on the base. */
export function hiddenOn(card: Card): (x: number, y: number) => boolean {
  return (x, y) =>
    cellOver(card, [x, y]) || card.lamps.some(({ plus, minus }) => toSegment([x, y], plus, minus) < lampMm);
}
