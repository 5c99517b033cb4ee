import type { Card, Contact } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { flapSides, type FlapMeeting } from './flapContact.ts';
import { flapOver } from './flaps.ts';
import { nearPieces, type NearPiece } from './nearest.ts';
import type { PadPlace } from './types.ts';

/** A tapped side of a contact lies on its copper within this, mm. */
const tapMm = 2.5;

/** A contact's sides, and how a flap's copper meets them. */
export interface ContactSides {
  pads: PadPlace[];
  meetings: FlapMeeting[];
}

/**
 * The sides that a contact joins: 'C1a', 'C1b', and more letters where its reach holds more pieces. The copper of a
 * flap that closes it is one of them: it lies where closing brings it onto the contact.
 */
export function contactSides(traced: Traced, contact: Contact, card: Card): ContactSides {
  const sides = sidesOf(contact);
  if (sides)
    return { pads: sides.map((at, k) => side(traced, `${contact.id}${letter(k)}`, at)), meetings: [] };
  const at = contact.at as Point;
  const flap = card.flaps.find(({ id }) => id === contact.flap);
  const near = meant(
    nearPieces(traced, at, contact.reach_mm, (p) => !card.flaps.some((each) => flapOver(each, p))),
  );
  const closed = flap && flapSides(traced, contact, flap, at, near);
  const found: Omit<PadPlace, 'pad'>[] =
    closed?.pads ?? near.map(({ piece, mm, at: place }) => ({ at: place, piece, mm, certainty: 0.95 }));
  while (found.length < 2) found.push({ at, piece: 0, mm: Infinity, certainty: 0.9 });
  return {
    pads: found.map((each, k) => ({ pad: `${contact.id}${letter(k)}`, ...each })),
    meetings: closed?.meetings ?? [],
  };
}

/** The two nearest pieces, and those not much farther: a finger's width, not a passing rail. */
function meant(near: NearPiece[]): NearPiece[] {
  if (near.length <= 2) return near;
  return near.filter(({ mm }) => mm <= 1.4 * near[1].mm).slice(0, 25);
}

/** The two tapped sides, or undefined where the contact is one place with a reach. */
export function sidesOf({ at }: Pick<Contact, 'at'>): [Point, Point] | undefined {
  return typeof at[0] === 'number' ? undefined : (at as [Point, Point]);
}

/** The middle of a contact. */
export function contactPlace(contact: Pick<Contact, 'at'>): Point {
  const sides = sidesOf(contact);
  if (!sides) return contact.at as Point;
  return [(sides[0][0] + sides[1][0]) / 2, (sides[0][1] + sides[1][1]) / 2];
}

function side(traced: Traced, pad: string, at: Point): PadPlace {
  const near = nearPieces(traced, at, tapMm)[0];
  if (!near) return { pad, at, piece: 0, mm: Infinity, certainty: 0.9 };
  return { pad, at: near.at, piece: near.piece, mm: near.mm, certainty: 0.95 };
}

function letter(k: number): string {
  return String.fromCharCode(97 + k);
}
