import type { Point } from '../geometry/index.ts';
import { contactPads, type Case } from './case.ts';
import { standIns } from './laidStrips.ts';

/** A place of copper of which it is known to what it belongs. */
export interface Terminal {
  name: string;
  label: string;
  piece: number;
  at: Point;
  /** How much it counts. */
  weight: number;
  lamp?: string;
}

/**
 * Labels that a sound card parts: '+' from '-', the planned nets from one another, the own sides of different contacts.
 * Weighs places to cut; a lamp that stands against the current or in a row with another is no bridge by itself.
 */
export function mustPart(a: string, b: string): boolean {
  return a !== b && kindOf(a) === kindOf(b);
}

/** 'plan:plus' and 'contact:C1' are told by their first letter, '+' and '-' are of one kind. */
function kindOf(label: string): string {
  return label === '-' ? '+' : label[0];
}

/** Two terminals that no sound card joins: the cell's faces, a lamp's own pads, two planned nets, two contacts' own sides. */
export function neverJoined(a: Terminal, b: Terminal): boolean {
  if (!mustPart(a.label, b.label)) return false;
  return kindOf(a.label) !== '+' || a.lamp === b.lamp;
}

/** Every place of known belonging: the cell's faces, lamp pads, planned strips, the own sides of contacts. */
export function terminals(found: Case): Terminal[] {
  return [...ofPads(found), ...ofPlan(found), ...ofContacts(found)];
}

function ofPads({ attached, card }: Case): Terminal[] {
  const intent = new Map(card.lamps.map((lamp) => [lamp.id, lamp.intent]));
  return attached.pads
    .filter(({ pad, piece }) => piece > 0 && /[+-]$/.test(pad))
    .map(({ pad, piece, at }) => {
      const id = pad.slice(0, -1);
      const sign = pad.slice(-1);
      const cell = id === 'cell';
      return {
        name: pad,
        label: sign,
        piece,
        at,
        weight: cell ? 3 : typeof intent.get(id) === 'object' ? 0.5 : 1,
        ...(cell ? {} : { lamp: id }),
      };
    });
}

function ofPlan({ laid }: Case): Terminal[] {
  return laid
    .filter((each) => each.laid)
    .flatMap((each) =>
      standIns(each).map(({ piece, at }) => ({
        name: each.strip.id,
        label: `plan:${each.strip.net}`,
        piece,
        at,
        weight: 1,
      })),
    );
}

/** Where several contacts share a side (the wave), the other sides are each contact's own and must stay apart. */
function ofContacts(found: Case): Terminal[] {
  const { card, wiring } = found;
  if (card.contacts.length < 2) return [];
  const sides = card.contacts.map(({ id }) => contactPads(found, id).filter(({ piece }) => piece > 0));
  const count = new Map<string, number>();
  for (const pads of sides) {
    for (const net of new Set(pads.map(({ pad }) => wiring.netOf[pad])))
      count.set(net, (count.get(net) ?? 0) + 1);
  }
  const [shared, most] = [...count].sort((a, b) => b[1] - a[1])[0] ?? ['', 0];
  if (most < card.contacts.length) return [];
  return sides.flatMap((pads, k) => {
    const { id } = card.contacts[k];
    const own = pads.filter(({ pad }) => wiring.netOf[pad] !== shared);
    const nets = own.map(({ pad }) => wiring.netOf[pad]);
    return [...own, ...waiting(found, id).filter(({ pad }) => nets.includes(wiring.netOf[pad]))].map(
      ({ pad, piece, at }) => ({ name: pad, label: `contact:${id}`, piece, at, weight: 1 }),
    );
  });
}

/** Pads of the lamps that wait for a contact. */
function waiting({ card, attached }: Case, contact: string) {
  const lamps = card.lamps.filter(({ intent }) => typeof intent === 'object' && intent.contact === contact);
  const names = lamps.flatMap(({ id }) => [`${id}+`, `${id}-`]);
  return attached.pads.filter(({ pad, piece }) => piece > 0 && names.includes(pad));
}
