import type { Card, Cell, Contact, Lamp } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';

/** Changes of a card's parts; each gives a new card. */

export function addLamp(
  card: Card,
  plus: Point,
  minus: Point,
  colour: Lamp['colour'],
): { card: Card; id: string } {
  const id = freshId('L', card);
  const lamp: Lamp = { id, plus: pair(plus), minus: pair(minus), colour, series_ohm: 0, on: 'base' };
  return { card: { ...card, lamps: [...card.lamps, lamp] }, id };
}

export function changeLamp(card: Card, id: string, part: Partial<Lamp>): Card {
  return { ...card, lamps: card.lamps.map((lamp) => (lamp.id === id ? { ...lamp, ...part } : lamp)) };
}

export function flipLamp(card: Card, id: string): Card {
  return {
    ...card,
    lamps: card.lamps.map((lamp) =>
      lamp.id === id ? { ...lamp, plus: lamp.minus, minus: lamp.plus } : lamp,
    ),
  };
}

export function layCell(card: Card, at: Point): Card {
  const before = card.cell ?? { kind: 'CR2032' as const, up: '+' as const, on: 'base', charge: 1 };
  return { ...card, cell: { ...before, at: pair(at) } };
}

export function changeCell(card: Card, part: Partial<Cell>): Card {
  return card.cell ? { ...card, cell: { ...card.cell, ...part } } : card;
}

/** A contact at one place, or with a place on each side. */
export function addContact(card: Card, at: Point, other?: Point): { card: Card; id: string } {
  const id = freshId('C', card);
  const strokes = card.contacts.filter(({ how }) => how === 'stroke');
  const last = card.contacts.at(-1);
  const how = last?.how ?? 'press';
  const contact: Contact = {
    id,
    how,
    ...(how === 'stroke' ? { order: strokes.length + 1 } : {}),
    at: other ? [pair(at), pair(other)] : pair(at),
    reach_mm: last?.reach_mm ?? 8,
  };
  return { card: { ...card, contacts: [...card.contacts, contact] }, id };
}

export function changeContact(card: Card, id: string, part: Partial<Contact>): Card {
  return { ...card, contacts: card.contacts.map((each) => (each.id === id ? { ...each, ...part } : each)) };
}

/** Takes a part away; lamps that were meant to light by a contact that goes are meant for nothing said. */
export function removePart(card: Card, id: string): Card {
  if (id === 'cell') {
    const { cell: _gone, ...rest } = card;
    return rest;
  }
  const meant = ({ intent, ...lamp }: Lamp): Lamp =>
    intent === undefined || (typeof intent === 'object' && intent.contact === id)
      ? lamp
      : { ...lamp, intent };
  return {
    ...card,
    lamps: card.lamps.filter((lamp) => lamp.id !== id).map(meant),
    contacts: card.contacts.filter((contact) => contact.id !== id),
  };
}

/** Gives a lamp or contact another name, everywhere that it is named. */
export function renamePart(card: Card, from: string, to: string): Card {
  const intent = (lamp: Lamp): Lamp =>
    typeof lamp.intent === 'object' && lamp.intent.contact === from
      ? { ...lamp, intent: { contact: to } }
      : lamp;
  return {
    ...card,
    lamps: card.lamps.map((lamp) => intent(lamp.id === from ? { ...lamp, id: to } : lamp)),
    contacts: card.contacts.map((each) => (each.id === from ? { ...each, id: to } : each)),
  };
}

export function isTaken(card: Card, id: string): boolean {
  return id === 'cell' || [...card.lamps, ...card.contacts].some((part) => part.id === id);
}

/** A place rounded to a hundredth of a mm, so that card files stay short. */
export function pair([x, y]: Point): [number, number] {
  return [Math.round(x * 100) / 100, Math.round(y * 100) / 100];
}

function freshId(letter: string, card: Card): string {
  let n = 1;
  while (isTaken(card, `${letter}${n}`)) n++;
  return `${letter}${n}`;
}
