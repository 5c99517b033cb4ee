import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { closeMap, flapCopper } from './fold.ts';
import { pieceAt } from './nearest.ts';
import type { FlapMeeting } from './flapContact.ts';

/** How often a contact still meets when the fold is off. */
export interface Tolerance {
  contact: string;
  flap: string;
  /** 0..1, of the draws in which every side is met. */
  share: number;
}

/** Less overlap than this does not count as met, mm^2 (common practice, no source). */
const leastMm2 = 1;
const stepMm = 0.1;
/** How far a fold by hand is off, at most (common practice, no source). */
export const foldOff = { mm: 0.5, degrees: 1 };

/**
 * Folds every flap anew with its line off by up to 0.5 mm and the flap turned by up to 1 degree, even draws.
 *
 * @param meetings as attach gives them; only contacts that meet as drawn are asked
 * @param seed of the draws, so that the same card always gives the same figures
 */
export function foldTolerance(
  traced: Traced,
  card: Card,
  meetings: readonly FlapMeeting[],
  { draws = 200, seed = 1, shiftMm = foldOff.mm, turnDeg = foldOff.degrees } = {},
): Tolerance[] {
  const contacts = new Set(meetings.filter(({ missMm }) => missMm === 0).map(({ contact }) => contact));
  return [...contacts].flatMap((id) => {
    const contact = card.contacts.find((each) => each.id === id);
    const flap = card.flaps.find((each) => each.id === contact?.flap);
    if (!contact || !flap || typeof contact.at[0] !== 'number') return [];
    const at = contact.at as Point;
    const exact = closeMap(flap);
    const cells = flapCopper(traced, flap, stepMm).filter(({ at: p }) => {
      const [x, y] = exact(p);
      return Math.hypot(x - at[0], y - at[1]) <= contact.reach_mm + 3;
    });
    const sides = partners(
      traced,
      cells.map(({ at: p }) => exact(p)),
    );
    const random = mulberry32(seed);
    const off = () => 2 * random() - 1;
    let met = 0;
    for (let n = 0; n < draws; n++) {
      const close = closeMap(flap, { shiftMm: shiftMm * off(), turnDeg: turnDeg * off() });
      const now = partners(
        traced,
        cells.map(({ at: p }) => close(p)),
      );
      if ([...sides.keys()].every((piece) => now.has(piece))) met++;
    }
    return [{ contact: id, flap: flap.id, share: met / draws }];
  });
}

/** Pieces on which enough of the landing lies. */
function partners(traced: Traced, landing: readonly Point[]): Map<number, number> {
  const area = new Map<number, number>();
  for (const p of landing) {
    const piece = pieceAt(traced, p);
    if (piece) area.set(piece, (area.get(piece) ?? 0) + stepMm * stepMm);
  }
  return new Map([...area].filter(([, mm2]) => mm2 >= leastMm2));
}

/** A small seeded generator of numbers in [0, 1): mulberry32, public domain. */
function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
