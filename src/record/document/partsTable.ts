import type { Card, Contact, Lamp } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { benchWords } from '../../words/bench.ts';
import { length as inUnit } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Block } from './types.ts';

/** Lamps, cell, contacts, flaps and patches, and where they sit. */
export function partsTable(card: Card): Block[] {
  const say = ([x, y]: Point) => `(${inUnit(x)}, ${inUnit(y)})`;
  const rows = [
    ...card.lamps.map((lamp) => [lamp.id, sayLamp(lamp), words.parts.pads(say(lamp.plus), say(lamp.minus))]),
    ...(card.cell
      ? [[words.parts.cellName, words.parts.cell(card.cell.kind, card.cell.up), say(card.cell.at)]]
      : []),
    ...card.contacts.map((contact) => [
      contact.id,
      sayContact(contact),
      placesOf(contact).map(say).join(', '),
    ]),
    ...card.flaps.map((flap) => [flap.id, words.parts.flap, flap.fold.map(say).join(' - ')]),
    ...card.patches.map((patch) => [patch.id, words.parts.patch, say(patch.outline[0] as Point)]),
  ];
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.sections.parts },
    { kind: 'table', caption: words.parts.caption, head: [...words.parts.head], rows },
  ];
}

function sayLamp(lamp: Lamp): string {
  const parts: string[] = [words.parts.lamp(benchWords.parts.colours[lamp.colour])];
  if (lamp.forward) parts.push(words.parts.own(String(lamp.forward.volt), String(lamp.forward.mA)));
  if (lamp.series_ohm > 0) parts.push(words.parts.series(String(lamp.series_ohm)));
  return parts.join(', ');
}

function sayContact(contact: Contact): string {
  if (contact.how === 'press') return words.parts.press;
  return words.parts.stroke(contact.order === undefined ? '' : ` ${contact.order}`);
}

function placesOf({ at }: Contact): Point[] {
  return typeof at[0] === 'number' ? [at as Point] : (at as [Point, Point]);
}
