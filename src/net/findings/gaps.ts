import { contactPlace } from '../../parts/index.ts';
import { keptApart } from '../apart.ts';
import { breaks, wideMm, type Break } from '../breaks.ts';
import { contactPads, padOf, type Case } from '../case.ts';
import { distance } from '../distance.ts';
import { inLampShadow, sheetAt } from '../covered.ts';
import { standings } from '../flow.ts';
import { statesOf } from '../states.ts';
import type { Finding } from '../types.ts';
import { netsOf } from '../wiring.ts';

/** Where every part is known, a break that starves no lamp is likely none: on drawn builds none of six was. */
const harmless = 0.45;

/**
 * Strips broken where they must conduct. A deliberate opening is no gap: a contact's, a lamp's, one that would join
 * what must stay apart. What a gap starves is reckoned with every gap mended but this one.
 */
export function gaps(found: Case): Finding[] {
  const all = breaks(found).filter(
    (each) => !deliberate(found, each) && !wouldShort(found, each) && !isSlit(found, each),
  );
  const open = all.filter((each) => each.a !== each.b && (each.paper >= 0.5 || isUnsure(each)));
  const mended = reached(found, open);
  return all.flatMap((each) => {
    const others = open.filter((other) => other !== each);
    const without = open.includes(each) ? reached(found, others) : mended;
    const starved = [...mended].filter((id) => !without.has(id));
    const seems = starved.length === 0 && each.by !== 'plan' && inLampShadow(found.card, each.at);
    return seems ? [] : [tell(found, each, starved)];
  });
}

/** A declared contact whose sides are these, or whose own place is here. */
function deliberate(found: Case, { at, a, b }: Break): boolean {
  const { graph } = found.wiring;
  return found.card.contacts.some((contact) => {
    const sides = contactPads(found, contact.id).flatMap(({ pad }) => {
      const node = graph.nodeOfPad.get(pad);
      return node === undefined ? [] : [graph.islandOf[node]];
    });
    const joins = a !== b && sides.includes(a) && sides.includes(b);
    return distance(contactPlace(contact), at) <= (joins ? contact.reach_mm : 2);
  });
}

/** Closing it would join the cell's faces or a lamp's pads: two strips that only happen to face each other. */
function wouldShort(found: Case, { a, b, planned }: Break): boolean {
  if (a === b || planned) return false;
  const { netOfIsland } = found.wiring;
  return keptApart(found, netOfIsland[a], netOfIsland[b]) !== undefined;
}

/** With a plan, a cut between two nets where none is planned parts what never belonged together: a tight place. */
function isSlit({ card, wiring: { netOfIsland } }: Case, { a, b, by, planned, opened }: Break): boolean {
  const parts = netOfIsland[a] !== netOfIsland[b];
  return (by === 'cut' || opened === true) && !planned && parts && (card.plan?.strips.length ?? 0) > 0;
}

function tell(found: Case, each: Break, lamps: string[]): Finding {
  const { netOfIsland } = found.wiring;
  const { at, mm, a, b, meant } = each;
  const certainty = each.paper * meant * weightOf(found, each, lamps);
  return {
    kind: 'gap',
    at,
    sizeMm: mm,
    certainty,
    evidence: { by: signOf(each), value: certainty },
    weight: 'holds',
    lamps,
    nets: [...new Set([netOfIsland[a], netOfIsland[b]])],
    sheet: sheetAt(found.card, at),
    facts: { split: netOfIsland[a] !== netOfIsland[b], unsure: isUnsure(each) },
  };
}

/** What speaks for it: paper seen there, or only that the mask is open. */
function signOf(each: Break): string {
  if (isUnsure(each)) return each.by;
  if (each.seen && each.by !== 'cut') return 'seen';
  return each.mm > wideMm ? 'wide' : each.by;
}

/** Where the picture leaves it open whether paper shows. */
function isUnsure({ by }: Break): boolean {
  return by === 'unsure' || by === 'fine';
}

/** A break that starves lamps is one; in a card whose parts are all known, one that starves none is doubtful. */
function weightOf(found: Case, each: Break, lamps: string[]): number {
  const { a, b, by, mm, planned, seen } = each;
  if (lamps.length > 0 || by === 'plan' || isUnsure(each) || (planned && (a !== b || seen))) return 1;
  const { card } = found;
  const known = card.lamps.length > 0 && ['cell+', 'cell-'].every((face) => padOf(found, face)?.piece);
  if (known) return a === b ? harmless : harmless * 0.8;
  // Without lamps a wide opening may be a lamp's own place.
  return card.lamps.length === 0 && mm > 1.5 && by === 'facing' ? 0.55 : 1;
}

/** Lamps on a way between the cell's faces, whichever way round, in some state, with these breaks mended. */
function reached(found: Case, mended: readonly Break[]): Set<string> {
  const { card, wiring } = found;
  const { nets, netOf } = netsOf(wiring.graph, [...wiring.joins, ...mended]);
  const out = new Set<string>();
  for (const state of statesOf(card, nets, netOf)) {
    for (const [id, standing] of standings(card, state, netOf)) if (standing !== 'dark') out.add(id);
  }
  return out;
}
