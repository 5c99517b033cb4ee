import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';

/** Where each pad of a card lies, mm: 'cell+', 'L1-', 'C1a' ... as they are called in a netlist. */
export function padPlaces(card: Card): Map<string, Point> {
  const places = new Map<string, Point>();
  for (const { id, plus, minus } of card.lamps) {
    places.set(`${id}+`, plus);
    places.set(`${id}-`, minus);
  }
  if (card.cell) {
    const { at, up, upper_contact: upper } = card.cell;
    places.set(`cell${up}`, upper ?? at);
    places.set(up === '+' ? 'cell-' : 'cell+', at);
  }
  for (const { id, at } of card.contacts) {
    const [a, b] = typeof at[0] === 'number' ? [at as Point, at as Point] : (at as [Point, Point]);
    places.set(`${id}a`, a);
    places.set(`${id}b`, b);
  }
  return places;
}

/** Pads of a contact in a netlist: its id and one letter. */
export function contactPads(id: string, netOf: Record<string, string>): string[] {
  return Object.keys(netOf).filter(
    (pad) => pad.length === id.length + 1 && pad.startsWith(id) && /[a-z]$/.test(pad),
  );
}
