import type { Point } from '../../geometry/index.ts';
import { contactPlace } from '../../parts/index.ts';
import { distance, lampOver, type Case } from '../case.ts';
import { hidden } from '../planned.ts';
import type { Finding } from '../types.ts';

/** Clearances under the card's limit between two nets. */
export function tightPlaces(found: Case): Finding[] {
  const { traced, card, wiring } = found;
  return traced.clearances
    .filter(({ mm, a, b }) => mm < card.limits.clearance_mm && wiring.netOfPiece[a] !== wiring.netOfPiece[b])
    .map(({ atA, atB, mm, a, b }) => ({
      at: between(atA, atB),
      mm,
      nets: [wiring.netOfPiece[a], wiring.netOfPiece[b]],
    }))
    .filter(({ at }) => !lampOver(card, at) && !atContact(found, at))
    .map(({ at, mm, nets }) => ({
      ...plain('tight', at, 'check' as const),
      sizeMm: mm,
      certainty: 0.9,
      nets,
      facts: { limit: card.limits.clearance_mm },
    }));
}

/** Places much narrower than their strip. */
export function narrowNecks({ traced, card, wiring }: Case): Finding[] {
  return traced.necks
    .filter(({ widthMm, usualMm }) => widthMm < card.limits.neck_ratio * usualMm)
    .filter(({ at }) => !lampOver(card, at) && !hidden({ card }, at))
    .map(({ at, widthMm, usualMm, piece }) => ({
      ...plain('narrow-neck', at, 'check' as const),
      sizeMm: widthMm,
      certainty: 0.85,
      nets: [wiring.netOfPiece[piece]],
      facts: { usual: usualMm },
    }));
}

/** Overlaps whose conduction a photograph cannot prove, and glare that may hide a break. */
export function seams({ traced, card, wiring }: Case): Finding[] {
  const settled = (at: Point) => card.joins.some((join) => join.conducts && distance(join.at, at) < 4);
  return traced.crossings
    .filter(
      ({ seam, glare, gap, other }) => gap < 0.3 && (seam >= 0.5 || (glare > 0.6 && other !== undefined)),
    )
    .filter(({ at }) => !lampOver(card, at) && !hidden({ card }, at) && !settled(at))
    .map(({ at, seam, piece }) => ({
      ...plain('seam', at, 'check' as const),
      certainty: seam >= 0.5 ? seam : 0.5,
      nets: [wiring.netOfPiece[piece]],
      facts: { glare: seam < 0.5 },
    }));
}

/** Ends that lead to no lamp, cell, contact, patch or neighbour. */
export function looseEnds(found: Case): Finding[] {
  const { traced, card, wiring, attached } = found;
  const used = (at: Point) =>
    attached.pads.some((pad) => pad.piece > 0 && distance(pad.at, at) < 6) ||
    lampOver(card, at) ||
    atContact(found, at) ||
    nearPart(found, at) ||
    traced.crossings.some((cut) => cut.other !== undefined && distance(cut.at, at) < 5);
  return traced.pieces
    .flatMap(({ ends }) => ends)
    .filter(({ at }) => !used(at))
    .map(({ at, piece }) => ({
      ...plain('loose-end', at, 'note' as const),
      certainty: 0.8,
      nets: [wiring.netOfPiece[piece]],
      facts: {},
    }));
}

/** Copper nearer to the base's edge than the trim allows. */
export function nearEdges({ traced, card, wiring }: Case): Finding[] {
  const { width, height } = traced.baseMm;
  return traced.pieces.flatMap(({ id, box }) => {
    const sides: [number, Point][] = [
      [box.x0, [box.x0, (box.y0 + box.y1) / 2]],
      [width - box.x1, [box.x1, (box.y0 + box.y1) / 2]],
      [box.y0, [(box.x0 + box.x1) / 2, box.y0]],
      [height - box.y1, [(box.x0 + box.x1) / 2, box.y1]],
    ];
    return sides
      .filter(([mm]) => mm >= 0 && mm < card.limits.edge_mm)
      .filter(([, at]) => !card.flaps.some(({ fold }) => fold.some((p) => distance(p, at) < 40)))
      .map(([mm, at]) => ({
        ...plain('near-edge', at, 'note' as const),
        sizeMm: mm,
        certainty: 0.8,
        nets: [wiring.netOfPiece[id]],
        facts: { limit: card.limits.edge_mm },
      }));
  });
}

function plain<K extends Finding['kind'], W extends Finding['weight']>(kind: K, at: Point, weight: W) {
  return { kind, at, weight, lamps: [] as string[], sheet: 'base' };
}

function between(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function atContact({ card }: Case, at: Point): boolean {
  return card.contacts.some(
    (contact) => distance(contactPlace(contact), at) <= Math.min(contact.reach_mm, 6),
  );
}

function nearPart({ card }: Case, at: Point): boolean {
  const cell = card.cell;
  if (cell && (distance(cell.at, at) < 13 || (cell.upper_contact && distance(cell.upper_contact, at) < 8)))
    return true;
  return card.patches.some(({ outline }) => outline.some((p) => distance(p, at) < 8)) || hidden({ card }, at);
}
