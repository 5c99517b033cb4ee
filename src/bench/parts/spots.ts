import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { contactPlace, sidesOf } from '../../parts/index.ts';
import { changeCell, changeContact, changeLamp, pair } from './partEdits.ts';

/** A place of a part that can be taken hold of. */
export interface Spot {
  part: string;
  at: Point;
  /** The card with this spot moved. */
  moved(card: Card, to: Point): Card;
}

/** All places that can be dragged; the ends of a part come before its middle, so that they win where they overlap. */
export function spotsOf(card: Card): Spot[] {
  return [...card.lamps.flatMap(lampSpots), ...card.contacts.flatMap(contactSpots), ...cellSpot(card)];
}

function lampSpots({ id, plus, minus }: Card['lamps'][number]): Spot[] {
  const middle: Point = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
  return [
    { part: id, at: plus, moved: (card, to) => changeLamp(card, id, { plus: pair(to) }) },
    { part: id, at: minus, moved: (card, to) => changeLamp(card, id, { minus: pair(to) }) },
    {
      part: id,
      at: middle,
      moved: (card, to) =>
        changeLamp(card, id, { plus: shifted(plus, middle, to), minus: shifted(minus, middle, to) }),
    },
  ];
}

function contactSpots(contact: Card['contacts'][number]): Spot[] {
  const { id } = contact;
  const sides = sidesOf(contact);
  const middle = contactPlace(contact);
  if (!sides)
    return [{ part: id, at: middle, moved: (card, to) => changeContact(card, id, { at: pair(to) }) }];
  const [a, b] = sides;
  return [
    { part: id, at: a, moved: (card, to) => changeContact(card, id, { at: [pair(to), pair(b)] }) },
    { part: id, at: b, moved: (card, to) => changeContact(card, id, { at: [pair(a), pair(to)] }) },
    {
      part: id,
      at: middle,
      moved: (card, to) => changeContact(card, id, { at: [shifted(a, middle, to), shifted(b, middle, to)] }),
    },
  ];
}

function cellSpot({ cell }: Card): Spot[] {
  return cell ? [{ part: 'cell', at: cell.at, moved: (card, to) => changeCell(card, { at: pair(to) }) }] : [];
}

function shifted([x, y]: Point, from: Point, to: Point): [number, number] {
  return pair([x + to[0] - from[0], y + to[1] - from[1]]);
}

/** The spot nearest a place, within a reach. */
export function spotAt(card: Card, [x, y]: Point, reach: number): Spot | undefined {
  let best: Spot | undefined;
  let least = reach;
  for (const spot of spotsOf(card)) {
    const far = Math.hypot(spot.at[0] - x, spot.at[1] - y);
    if (far >= least) continue;
    best = spot;
    least = far;
  }
  return best;
}
