import type { Point } from '../../geometry/index.ts';
import { contactPlace } from '../../parts/index.ts';
import { mustStayApart } from '../apart.ts';
import { distance, lampOver, type Case } from '../case.ts';
import { standings } from '../flow.ts';
import { hidden, plannedAt, plannedOpens } from '../planned.ts';
import { statesOf } from '../states.ts';
import type { Finding } from '../types.ts';
import { wire } from '../wiring.ts';

/** A break that may be one: two pieces (or one, where the mask bridged it) and how likely paper shows there. */
interface Break {
  at: Point;
  mm: number;
  a: number;
  b: number;
  paper: number;
  planned: boolean;
}

/** Breaks nearer than this to each other are one, mm. */
const sameMm = 3;
/** A planned strip may stay open so far before it counts as not laid yet, mm. */
const mostMm = 12;

/** Strips broken where they must conduct. Deliberate openings, lamps, cell and patches lie over no gap. */
export function gaps(found: Case): Finding[] {
  const apart = mustStayApart(found).map(({ a, b }) => [
    found.wiring.netOfPiece[a.piece],
    found.wiring.netOfPiece[b.piece],
  ]);
  return breaks(found)
    .filter((cut) => !deliberate(found, cut))
    .filter((cut) => cut.planned || !wouldShort(found, apart, cut))
    .map((cut) => tell(found, cut));
}

function breaks(found: Case): Break[] {
  const { traced } = found;
  const planned: Break[] = plannedOpens(found)
    .filter(({ mm }) => mm <= mostMm)
    .map(({ at, mm, a, b }) => ({ at, mm, a, b, paper: mm >= 0.5 ? 0.95 : 0.6, planned: true }));
  const seen: Break[] = traced.crossings
    .filter(({ gap }) => gap >= 0.3)
    .map(({ at, widthMm, piece, other, gap }) => ({
      at,
      mm: widthMm,
      a: piece,
      b: other ?? piece,
      paper: gap,
      planned: found.card.plan ? plannedAt(found, at) : false,
    }));
  const all: Break[] = [];
  for (const cut of [...seen, ...planned].sort((x, y) => y.paper - x.paper)) {
    if (!all.some(({ at }) => distance(at, cut.at) < sameMm)) all.push(cut);
  }
  return all;
}

function deliberate(found: Case, { at, a, b }: Break): boolean {
  const { card, attached } = found;
  if (lampOver(card, at) || hidden(found, at)) return true;
  return card.contacts.some((contact) => {
    const sides = attached.pads.filter(
      ({ pad }) => pad.startsWith(contact.id) && pad.length === contact.id.length + 1,
    );
    const joins = sides.some(({ piece }) => piece === a) && sides.some(({ piece }) => piece === b);
    const reach = joins ? contact.reach_mm : 2;
    return distance(contactPlace(contact), at) <= reach;
  });
}

/** Closing it would join what must stay apart: two strips that only happen to face each other. */
function wouldShort(found: Case, apart: string[][], { a, b }: Break): boolean {
  const { netOfPiece } = found.wiring;
  const [na, nb] = [netOfPiece[a], netOfPiece[b]];
  return na !== nb && apart.some(([p, q]) => (p === na && q === nb) || (p === nb && q === na));
}

function tell(found: Case, cut: Break): Finding {
  const { netOfPiece } = found.wiring;
  const lamps = cut.a === cut.b ? [] : lampsThatItStarves(found, cut);
  const parts = found.card.lamps.length > 0 && found.card.cell !== undefined;
  const meant = cut.planned || lamps.length > 0 || cut.a === cut.b ? 1 : parts ? 0.6 : 0.85;
  const split = netOfPiece[cut.a] !== netOfPiece[cut.b];
  const certainty = Math.min(0.99, cut.paper * meant);
  return {
    kind: 'gap',
    at: cut.at,
    sizeMm: cut.mm,
    certainty,
    weight: certainty >= 0.5 ? 'holds' : 'check',
    lamps,
    nets: [...new Set([netOfPiece[cut.a], netOfPiece[cut.b]])],
    sheet: 'base',
    facts: { split, unsure: cut.paper < 0.5 },
  };
}

/** Lamps that would light in some state if the break were closed, and do not now. */
function lampsThatItStarves(found: Case, { a, b }: Break): string[] {
  const { traced, attached, card, wiring, states } = found;
  const mended = wire(traced, attached, card, [{ a, b }]);
  const then = fedSomewhere(found, statesOf(card, mended.nets, mended.netOf), mended.netOf);
  const now = fedSomewhere(found, states, wiring.netOf);
  return [...then].filter((id) => !now.has(id));
}

export function fedSomewhere(
  { card }: Pick<Case, 'card'>,
  states: Case['states'],
  netOf: Record<string, string>,
): Set<string> {
  const fed = new Set<string>();
  for (const state of states) {
    for (const [id, standing] of standings(card, state, netOf)) if (standing === 'fed') fed.add(id);
  }
  return fed;
}
