import type { Card } from '../card/index.ts';
import type { Traced } from '../trace/index.ts';
import { cellFaces } from './cellFaces.ts';
import { contactSides } from './contactSides.ts';
import { lampPads } from './lampPads.ts';
import type { Attached } from './types.ts';

/** Lays every lamp, the cell and every contact of a card on the traced copper. */
export function attach(traced: Traced, card: Card): Attached {
  const lamps = card.lamps.flatMap((lamp) => lampPads(traced, lamp));
  const faces = card.cell ? cellFaces(traced, card, card.cell) : { pads: [], nest: [] };
  const contacts = card.contacts.map((contact) => contactSides(traced, contact, card));
  return {
    pads: [...lamps, ...faces.pads, ...contacts.flatMap(({ pads }) => pads)],
    nest: faces.nest,
    meetings: contacts.flatMap(({ meetings }) => meetings),
  };
}
