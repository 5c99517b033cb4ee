import type { Card, Contact } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import { toSegment } from '../net/distance.ts';
import type { Finding } from '../net/index.ts';
import { cellTable } from '../power/cellTable.ts';
import { findingWords as words } from '../words/findings.ts';
import { length } from '../words/lengths.ts';

type Parts = Pick<Card, 'lamps' | 'cell' | 'contacts'>;

/** A part no farther than this is named beside a place, mm. */
const nearMm = 10;

/** Where a finding lies, for one who does not see the sheet: how far in, and by which part. */
export function sayPlace({ at, sheet }: Pick<Finding, 'at' | 'sheet'>, card: Parts): string {
  const place = words.place(length(at[0]), length(at[1]));
  const near = nearestPart(at, sheet, card);
  return near === undefined ? place : words.placeBy(place, near);
}

/** The nearest part on the same sheet, in words; undefined where none is near. */
export function nearestPart(at: Point, sheet: string, { lamps, cell, contacts }: Parts): string | undefined {
  const found = [
    ...lamps
      .filter(({ on }) => on === sheet)
      .map(({ id, plus, minus }) => ({ say: words.near.lamp(id), mm: toSegment(at, plus, minus) })),
    ...(cell && cell.on === sheet
      ? [{ say: words.near.cell, mm: Math.max(0, apart(at, cell.at) - cellTable[cell.kind].diameterMm / 2) }]
      : []),
    ...contacts.map((contact) => ({ say: words.near.contact(contact.id), mm: fromContact(at, contact) })),
  ].filter(({ mm }) => mm <= nearMm);
  return found.sort((a, b) => a.mm - b.mm)[0]?.say;
}

function fromContact(at: Point, contact: Contact): number {
  const [a, b] = (typeof contact.at[0] === 'number' ? [contact.at, contact.at] : contact.at) as [
    Point,
    Point,
  ];
  return toSegment(at, a, b);
}

function apart([x0, y0]: Point, [x1, y1]: Point): number {
  return Math.hypot(x1 - x0, y1 - y0);
}
