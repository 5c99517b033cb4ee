import { closeMap, flapCopper, overlaps } from '../../parts/index.ts';
import { contactPads, type Case } from '../case.ts';
import { cellOver } from '../covered.ts';
import type { Finding } from '../types.ts';
import { netsOf } from '../wiring.ts';

/** Touching less than this is within what the tracing can tell, mm^2. */
const leastMm2 = 0.5;

/** Copper of a closed flap that lies on copper it must not touch: it shorts the cell or a lamp while closed. */
export function closedFlapBridges(found: Case): Finding[] {
  return found.card.flaps.flatMap((flap) => {
    const { card, traced, wiring } = found;
    const { graph, netOfIsland } = wiring;
    const close = closeMap(flap);
    const touched = overlaps(traced, flapCopper(traced, flap), close, (p) => !cellOver(card, p, 0))
      .filter(({ areaMm2 }) => areaMm2 >= leastMm2)
      .map((each) => ({
        ...each,
        // Mirroring is its own inverse.
        a: graph.islandAt(each.flapPiece, close(each.at)),
        b: graph.islandAt(each.basePiece, each.at),
      }));
    return touched.flatMap((each): Finding[] => {
      const joined = whatIsJoined(found, touched);
      const others = touched.filter((other) => other !== each);
      if (!joined || isSide(found, each.basePiece) || whatIsJoined(found, others)) return [];
      return [
        {
          kind: 'bridge',
          at: each.at,
          sizeMm: Math.sqrt(each.areaMm2),
          certainty: each.areaMm2 > 2 ? 0.88 : 0.7,
          weight: 'holds',
          lamps: joined.lamp ? [joined.lamp] : [],
          nets: [...new Set([netOfIsland[each.a], netOfIsland[each.b]])],
          sheet: 'base',
          facts: { between: joined.between, and: joined.and, shorts: !joined.lamp, closed: flap.id },
        },
      ];
    });
  });
}

/** Whether a contact is meant to meet this piece. */
function isSide({ card, attached }: Case, piece: number): boolean {
  return card.contacts.some(({ id }) => contactPads({ attached }, id).some((pad) => pad.piece === piece));
}

/** What the closed flap joins: the cell's faces or the pads of a lamp. */
function whatIsJoined(
  { card, wiring }: Case,
  touched: readonly { a: number; b: number }[],
): { between: string; and: string; lamp?: string } | undefined {
  const { netOf } = netsOf(wiring.graph, [...wiring.joins, ...touched]);
  const meet = (id: string) =>
    netOf[`${id}+`] !== undefined &&
    netOf[`${id}+`] === netOf[`${id}-`] &&
    wiring.netOf[`${id}+`] !== wiring.netOf[`${id}-`];
  if (meet('cell')) return { between: 'cell+', and: 'cell-' };
  const lamp = card.lamps.find(({ id }) => meet(id));
  return lamp && { between: `${lamp.id}+`, and: `${lamp.id}-`, lamp: lamp.id };
}
