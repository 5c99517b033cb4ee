import { contactPlace } from '../../parts/index.ts';
import { padOf, type Case } from '../case.ts';
import type { Finding } from '../types.ts';

/** Contacts with copper on one side only or on none, and a cell whose face meets no copper. */
export function missedContacts(found: Case): Finding[] {
  const { card, attached } = found;
  const contacts = card.contacts.flatMap((contact) => {
    const sides = attached.pads.filter(
      ({ pad }) => pad.length === contact.id.length + 1 && pad.startsWith(contact.id),
    );
    const open = sides.filter(({ piece }) => piece === 0);
    if (open.length === 0) return [];
    const at = sides.length - open.length === 1 ? contactPlace(contact) : open[0].at;
    return [missed(at, contact.id, sides.length - open.length)];
  });
  const faces = ['cell+', 'cell-'].flatMap((face) => {
    const pad = padOf(found, face);
    return pad && pad.piece === 0 ? [missed(pad.at, face, 0)] : [];
  });
  return [...contacts, ...faces];
}

function missed(at: Finding['at'], of: string, sides: number): Finding {
  return {
    kind: 'missed-contact',
    at,
    certainty: 0.85,
    weight: 'holds',
    lamps: [],
    nets: [],
    sheet: 'base',
    facts: { of, sides },
  };
}

/** Copper of the other face's net under the cell's rim: the can's edge would short it. */
export function rimShorts(found: Case): Finding[] {
  const { card, attached, wiring } = found;
  if (!card.cell) return [];
  const upper = wiring.netOf[`cell${card.cell.up}`];
  const lower = wiring.netOf[card.cell.up === '+' ? 'cell-' : 'cell+'];
  const wrong = attached.underCell.filter((piece) => wiring.netOfPiece[piece] === upper && upper !== lower);
  if (wrong.length === 0) return [];
  return [
    {
      kind: 'shorted-cell',
      at: card.cell.at,
      certainty: 0.9,
      weight: 'holds',
      lamps: [],
      nets: [upper],
      sheet: 'base',
      facts: { rim: true },
    },
  ];
}
