import type { Point } from '../../geometry/index.ts';
import { mustStayApart, type Apart } from '../apart.ts';
import { distance, type Case } from '../case.ts';
import { cutAt, depthField, saddleBetween, type DepthField, type Saddle } from '../saddle.ts';
import type { Finding } from '../types.ts';

/** No more bridges than this are told one by one; after so many the card is read anew. */
const most = 6;
/** A way narrower than this share of the strips it joins is a sliver or a splash, not a strip laid there. */
const sliverShare = 0.65;

/**
 * Copper that joins what must stay apart: each time the narrowest place on the widest way between the two, then that
 * place is cut in thought and the rest asked again, so that one splash gives one finding.
 */
export function bridges(found: Case): Finding[] {
  const joined = mustStayApart(found).filter(({ a, b }) => sameNet(found, a.piece, b.piece));
  if (joined.length === 0) return [];
  const nets = new Set(joined.map(({ a }) => found.wiring.netOfPiece[a.piece]));
  const pieces = new Set(
    found.wiring.nets.filter(({ id }) => nets.has(id)).flatMap(({ pieces: ids }) => ids),
  );
  const field = depthField(found.traced, pieces);
  const jumps = found.wiring.joins.map(({ at }) => [at, at] as const);
  const findings: Finding[] = [];
  for (const pair of joined) {
    for (let again = 0; again < most && findings.length < most; again++) {
      const saddle = saddleBetween(field, pair.a.at, pair.b.at, jumps);
      if (!saddle) break;
      findings.push(tell(found, pair, saddle));
      cutAt(field, saddle.at, Math.max(0.8, 0.75 * saddle.widthMm));
      if (saddle.widthMm > 3) clear(field, pair);
    }
  }
  return merged(findings);
}

/** A wide way cannot be cut at one place: the pair's lesser side is taken out instead. */
function clear(field: DepthField, { b }: Apart): void {
  cutAt(field, b.at, 4);
}

function sameNet({ wiring }: Case, a: number, b: number): boolean {
  return wiring.netOfPiece[a] === wiring.netOfPiece[b];
}

function tell(found: Case, pair: Apart, { at, widthMm }: Saddle): Finding {
  const { traced, wiring } = found;
  const usual = Math.min(...[pair.a.piece, pair.b.piece].map((id) => traced.pieces[id - 1].widthMm));
  const sliver = widthMm < sliverShare * usual;
  const lamp = found.card.lamps.find(({ id }) => pair.lamps.length === 1 && id === pair.lamps[0]);
  const beneath = lamp && distance(at, middle(lamp.plus, lamp.minus)) < distance(lamp.plus, lamp.minus);
  return {
    kind: beneath ? 'lamp-on-one-strip' : pair.why === 'cell' && !sliver ? 'shorted-cell' : 'bridge',
    at,
    sizeMm: widthMm,
    certainty: sliver ? 0.95 : 0.8,
    weight: 'holds',
    lamps: pair.lamps,
    nets: [wiring.netOfPiece[pair.a.piece]],
    sheet: 'base',
    facts: { between: pair.a.name, and: pair.b.name, why: pair.why },
  };
}

function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** Findings at one place are one, the first (severest pair) kept. */
function merged(findings: Finding[]): Finding[] {
  const kept: Finding[] = [];
  for (const finding of findings) {
    const same = kept.find(({ at }) => distance(at, finding.at) < 3);
    if (!same) kept.push(finding);
    else same.lamps = [...new Set([...same.lamps, ...finding.lamps])];
  }
  return kept;
}
