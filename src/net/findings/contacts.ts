import { contactPlace, type FlapMeeting } from '../../parts/index.ts';
import { contactPads, padOf, type Case } from '../case.ts';
import { sheetAt } from '../covered.ts';
import { isUnseen } from '../../trace/index.ts';
import type { Finding } from '../types.ts';

/** Contacts with copper on one side only or on none, and a cell whose face meets no copper. */
export function missedContacts(found: Case): Finding[] {
  const { card } = found;
  const contacts = card.contacts.flatMap((contact) => {
    const sides = contactPads(found, contact.id);
    const open = sides.filter(({ piece }) => piece === 0);
    if (open.length === 0) return [];
    const misses = found.attached.meetings.filter((each) => each.contact === contact.id && each.missMm > 0);
    if (misses.length > 0) return misses.map((miss) => beside(found, contactPlace(contact), miss));
    const one = sides.length - open.length === 1;
    return [missed(found, one ? contactPlace(contact) : open[0].at, contact.id, one ? 1 : 0)];
  });
  const faces = ['cell+', 'cell-'].flatMap((face) => {
    const pad = padOf(found, face);
    return pad && pad.piece === 0 ? [missed(found, pad.at, face, 0)] : [];
  });
  return [...contacts, ...faces];
}

function missed({ card, traced }: Case, at: Finding['at'], of: string, sides: number): Finding {
  return {
    kind: 'missed-contact',
    at,
    ...(isUnseen(traced, at)
      ? { certainty: 0.45, weight: 'check' as const }
      : { certainty: 0.85, weight: 'holds' as const }),
    lamps: behind(card, of),
    nets: [],
    sheet: sheetAt(card, at),
    facts: { of, sides },
  };
}

/** A flap's copper that lands beside its partner. */
function beside(found: Case, at: Finding['at'], { contact, flap, missMm, direction }: FlapMeeting): Finding {
  const far = Number.isFinite(missMm);
  return {
    ...missed(found, at, contact, 1),
    ...(far ? { sizeMm: missMm } : {}),
    certainty: 0.9,
    facts: { of: contact, sides: 1, flap, direction },
  };
}

/** Lamps that wait for this contact; every lamp for a face of the cell. */
function behind(card: Case['card'], of: string): string[] {
  return card.lamps
    .filter(({ intent }) => of.startsWith('cell') || (typeof intent === 'object' && intent.contact === of))
    .map(({ id }) => id);
}

/** Copper of the other face's net under the cell's rim: the can's edge would short it. */
export function rimShorts({ card, attached, wiring }: Case): Finding[] {
  if (!card.cell) return [];
  const upper = wiring.netOf[`cell${card.cell.up}`];
  const lower = wiring.netOf[card.cell.up === '+' ? 'cell-' : 'cell+'];
  if (upper === undefined || upper === lower) return [];
  const wrong = attached.nest.find(
    ({ piece, at, areaMm2 }) =>
      areaMm2 > 0.3 && wiring.netOfIsland[wiring.graph.islandAt(piece, at)] === upper,
  );
  if (!wrong) return [];
  return [
    {
      kind: 'shorted-cell',
      at: wrong.at,
      sizeMm: Math.sqrt(wrong.areaMm2),
      certainty: wrong.areaMm2 > 2 ? 0.92 : 0.75,
      weight: 'holds',
      lamps: [],
      nets: [upper],
      sheet: 'base',
      facts: { rim: true, areaMm2: wrong.areaMm2 },
    },
  ];
}
