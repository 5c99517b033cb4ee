import type { Card } from '../card/index.ts';
import { cellOver } from '../net/covered.ts';
import { toSegment } from '../net/distance.ts';

/** Within this of the line between its pads a lamp may lie, shine or throw its shadow, mm. */
const lampMm = 3;

type Places = (x: number, y: number) => boolean;

/** Where the card has a lamp, its shadow included: mm on the base. */
export function lampsOn({ lamps }: Card): Places {
  return (x, y) => lamps.some(({ plus, minus }) => toSegment([x, y], plus, minus) < lampMm);
}

/** Where the card has a lamp or the cell, its rim and shine included. */
export function hiddenOn(card: Card): Places {
  const lamp = lampsOn(card);
  return (x, y) => cellOver(card, [x, y]) || lamp(x, y);
}
