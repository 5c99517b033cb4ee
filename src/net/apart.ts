import { padOf, type Case } from './case.ts';
import type { Point } from '../geometry/index.ts';
import { plannedPairs } from './planned.ts';

/** Two places of copper that no sound card joins, and which lamps or contacts say so. */
export interface Apart {
  a: { piece: number; at: Point; name: string };
  b: { piece: number; at: Point; name: string };
  why: 'cell' | 'lamp' | 'contact' | 'plan';
  lamps: string[];
}

/** Pairs that must stay apart: the cell's faces, each lamp's pads, a contact's sides, different contacts' own sides, planned nets. */
export function mustStayApart(found: Case): Apart[] {
  const { card } = found;
  const pairs: Apart[] = [...padPair(found, 'cell+', 'cell-', 'cell', [])];
  pairs.push(...plannedPairs(found));
  for (const { id } of card.lamps) pairs.push(...padPair(found, `${id}+`, `${id}-`, 'lamp', [id]));
  for (const { id } of card.contacts) pairs.push(...padPair(found, `${id}a`, `${id}b`, 'contact', []));
  return [...pairs, ...betweenContacts(found)];
}

function padPair(found: Case, one: string, two: string, why: Apart['why'], lamps: string[]): Apart[] {
  const a = padOf(found, one);
  const b = padOf(found, two);
  if (!a?.piece || !b?.piece) return [];
  return [{ a: { ...a, name: one }, b: { ...b, name: two }, why, lamps }];
}

/** Lamps behind different contacts must not share the copper before their contacts. */
function betweenContacts(found: Case): Apart[] {
  const { card, wiring } = found;
  const behind = card.lamps.flatMap((lamp) => {
    const intent = lamp.intent;
    if (typeof intent !== 'object') return [];
    const sides = found.attached.pads.filter(
      ({ pad }) => pad.startsWith(intent.contact) && pad.length === intent.contact.length + 1,
    );
    const own = sides.find(
      ({ pad, piece }) =>
        piece > 0 && [`${lamp.id}+`, `${lamp.id}-`].some((p) => wiring.netOf[p] === wiring.netOf[pad]),
    );
    return own ? [{ lamp: lamp.id, contact: intent.contact, pad: own }] : [];
  });
  return behind.flatMap((one, k) =>
    behind
      .slice(k + 1)
      .filter(({ contact }) => contact !== one.contact)
      .map((two) => ({
        a: { ...one.pad, name: one.pad.pad },
        b: { ...two.pad, name: two.pad.pad },
        why: 'contact' as const,
        lamps: [one.lamp, two.lamp],
      })),
  );
}
