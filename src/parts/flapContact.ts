import type { Contact, Flap } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { closeMap, flapCopper, missOf, overlaps, type CopperCell } from './fold.ts';
import type { NearPiece } from './nearest.ts';
import type { PadPlace } from './types.ts';

/** Less overlap than this does not count as met, mm^2 (common practice, no source). */
const leastMm2 = 1;

/** How a flap's copper meets the strips of a contact that it closes. */
export interface FlapMeeting {
  contact: string;
  flap: string;
  overlapMm2: number;
  missMm: number;
  /** Where it lands, seen from the partner: left, right, above, below; '' where it meets. */
  direction: 'left' | 'right' | 'above' | 'below' | '';
}

/**
 * The sides of a contact that a flap closes: the flap's copper and every strip that it lands on. A strip beside which it
 * lands is a side without copper, told by how far it is missed.
 *
 * @param near strips of the base round the contact
 * @returns undefined where the flap brings no copper there, so that it only presses
 */
export function flapSides(
  traced: Traced,
  contact: Contact,
  flap: Flap,
  at: Point,
  near: readonly NearPiece[],
): { pads: Omit<PadPlace, 'pad'>[]; meetings: FlapMeeting[] } | undefined {
  const close = closeMap(flap);
  const landing = flapCopper(traced, flap).filter(
    ({ at: p }) => distance(close(p), at) <= contact.reach_mm + 4,
  );
  if (landing.length === 0) return undefined;
  const piece = nearestOf(landing, close, at);
  const own = landing.filter((cell) => cell.piece === piece);
  const met = overlaps(traced, own, close, () => true).filter(({ areaMm2 }) => areaMm2 >= leastMm2);
  const wanted = near.filter((each) => each.piece !== piece);
  const sides = wanted.map((each) => {
    const overlap = met.find(({ basePiece }) => basePiece === each.piece);
    if (overlap) {
      const meeting = {
        contact: contact.id,
        flap: flap.id,
        overlapMm2: overlap.areaMm2,
        missMm: 0,
        direction: '' as const,
      };
      return { pad: { at: overlap.at, piece: each.piece, mm: 0, certainty: 0.95 }, meeting };
    }
    const points = own.map(({ at: p }) => close(p));
    const miss = missOf(traced, points, each.piece, at, contact.reach_mm + 2);
    const mm = miss?.mm ?? Infinity;
    const direction = miss ? directionOf(miss.by) : ('' as const);
    const meeting = { contact: contact.id, flap: flap.id, overlapMm2: 0, missMm: mm, direction };
    return { pad: { at: miss?.at ?? each.at, piece: 0, mm, certainty: 0.9 }, meeting };
  });
  const self = { at: own[0].at, piece, mm: 0, certainty: 0.95 };
  return { pads: [...sides.map(({ pad }) => pad), self], meetings: sides.map(({ meeting }) => meeting) };
}

function nearestOf(cells: readonly CopperCell[], close: (p: Point) => Point, at: Point): number {
  const near = cells.reduce((a, b) => (distance(close(b.at), at) < distance(close(a.at), at) ? b : a));
  return near.piece;
}

/** The partner lies this way from the landing, so the landing lies the other way from its partner. */
function directionOf([x, y]: Point): FlapMeeting['direction'] {
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'left' : 'right';
  return y > 0 ? 'above' : 'below';
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
