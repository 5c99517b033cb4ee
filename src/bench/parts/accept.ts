import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Suggested } from '../../parts/suggest/index.ts';
import { editCard } from '../state/editCard.ts';
import { change } from '../state/store.ts';
import { addLamp, layCell } from './partEdits.ts';

type Lamp = Suggested['lamps'][number];
type Cell = NonNullable<Suggested['cell']>;

/** Makes a proposed lamp one of the card's. */
export function acceptLamp(lamp: Lamp): void {
  editCard((card) => {
    const added = withLamp(card, lamp);
    change({ part: added.id });
    return added.card;
  });
}

/** Makes the proposed cell the card's. */
export function acceptCell(cell: Cell): void {
  editCard((card) => withCell(card, cell));
  change({ part: 'cell' });
}

/** Makes all that is proposed the card's, as one step. */
export function acceptAll({ lamps, cell }: Suggested): void {
  editCard((card) => {
    const laid = lamps.reduce((so, lamp) => withLamp(so, lamp).card, card);
    return cell ? withCell(laid, cell) : laid;
  });
}

/** Accepts what is proposed at a tapped place. @returns false where nothing is */
export function acceptAt({ lamps, cell }: Suggested, [x, y]: Point): boolean {
  const lamp = lamps.find(({ plus, minus }) => {
    const far = Math.hypot((plus[0] + minus[0]) / 2 - x, (plus[1] + minus[1]) / 2 - y);
    return far < lampReachMm;
  });
  if (lamp) acceptLamp(lamp);
  else if (cell && Math.hypot(cell.at[0] - x, cell.at[1] - y) < cell.diameterMm / 2) acceptCell(cell);
  else return false;
  return true;
}

/** A tap this near a proposed lamp's middle takes it, mm. */
const lampReachMm = 4;

function withLamp(card: Card, { plus, minus }: Lamp) {
  return addLamp(card, plus, minus, card.lamps.at(-1)?.colour ?? 'white');
}

function withCell(card: Card, { at, kind }: Cell): Card {
  const laid = layCell(card, at);
  return laid.cell ? { ...laid, cell: { ...laid.cell, kind } } : laid;
}
