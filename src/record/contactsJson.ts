import { attach, foldTolerance } from '../parts/index.ts';
import type { Recordable } from './types.ts';

const round = (value: number, digits: number) => Number(value.toFixed(digits));

/** How each contact is closed; where a flap closes it also how well its copper lands, and how much the fold may be off. */
export function contactsJson({ card, traced, netlist }: Pick<Recordable, 'card' | 'traced' | 'netlist'>) {
  const folded = card.contacts.some(({ flap }) => flap !== undefined);
  const meetings = folded ? attach(traced, card).meetings : [];
  const tolerances = folded ? foldTolerance(traced, card, meetings) : [];
  return card.contacts.map(({ id, how, order, flap }) => ({
    id,
    how,
    ...(order === undefined ? {} : { order }),
    nets: Object.keys(netlist.netOf)
      .filter((pad) => pad.length === id.length + 1 && pad.startsWith(id))
      .map((pad) => netlist.netOf[pad]),
    ...(flap === undefined ? {} : { flap }),
    sides: meetings
      .filter(({ contact }) => contact === id)
      .map(({ overlapMm2, missMm, direction }) => ({
        overlap_mm2: round(overlapMm2, 2),
        miss_mm: Number.isFinite(missMm) ? round(missMm, 2) : null,
        direction: direction === '' ? null : direction,
      })),
    tolerance: toleranceJson(tolerances.find(({ contact }) => contact === id)?.share),
  }));
}

/** The share of draws, the fold off by up to 0.5 mm and 1 degree, in which the contact still closes. */
function toleranceJson(share: number | undefined) {
  return share === undefined ? null : { fold_off_mm: 0.5, turned_deg: 1, still_meets: round(share, 3) };
}
