import type { Point } from '../../geometry/index.ts';
import type { Case } from '../case.ts';
import { between, distance } from '../distance.ts';
import { sheetAt } from '../covered.ts';
import { bottleneck, liveComponents, type Way } from '../ways.ts';
import { neverJoined } from '../terminals.ts';
import { partingGain, waysOf, type Placed } from '../parting.ts';
import type { Finding } from '../types.ts';

/** No more bridges than this are told one by one; after so many the card is read anew. */
const most = 6;
/** A way narrower than this share of the strips it joins is a sliver or a splash, not a strip laid there. */
const sliverShare = 0.65;

/**
 * Copper that joins what must stay apart. The graph of centre-lines is asked which one stretch, taken out, parts the
 * most of it and the least of what belongs together; of equals the narrowest that runs from strip to strip. It is then
 * taken out in thought and the rest asked again, so that one splash gives one finding.
 */
export function bridges(found: Case): Finding[] {
  const { ways, placed } = waysOf(found);
  const findings: Finding[] = [];
  for (let n = 0; n < most; n++) {
    const parting = bestParting(ways, placed);
    if (!parting) break;
    findings.push(tell(found, parting));
    parting.way.open = true;
  }
  return findings;
}

interface Parting {
  way: Way;
  /** Terminals that it joins though they must stay apart. */
  pairs: [Placed, Placed][];
  /** It alone holds them together. */
  alone: boolean;
}

function bestParting(ways: Way[], placed: Placed[]): Parting | undefined {
  const component = liveComponents(ways);
  const pairs = conflicts(placed, component);
  for (const where of new Set(pairs.map(([a]) => component(a.node)))) {
    const own = pairs.filter(([a]) => component(a.node) === where);
    const live = ways.filter((way) => !way.open && component(way.from) === where);
    const here = placed.filter(({ node }) => component(node) === where);
    const parting = partingOf(ways, live, here, own);
    if (parting) return parting;
  }
  return undefined;
}

function partingOf(ways: Way[], live: Way[], here: Placed[], own: [Placed, Placed][]): Parting | undefined {
  for (const way of byGain(live, here)) {
    way.open = true;
    const after = liveComponents(ways);
    way.open = false;
    const parted = own.filter(([a, b]) => after(a.node) !== after(b.node));
    if (parted.length > 0) return { way, pairs: parted, alone: true };
  }
  const way = bottleneck(live, own[0][0].node, own[0][1].node);
  return way && { way, pairs: own, alone: false };
}

/** The few best ways to open: most gain, then narrowest, then from side to side. */
function byGain(live: Way[], here: Placed[]): Way[] {
  const width = ({ widthMm, across }: Way) => widthMm * (across ? 0.6 : 1);
  return partingGain(live, here)
    .filter(({ gain }) => gain > 0)
    .sort((a, b) => b.gain - a.gain || width(a.way) - width(b.way))
    .slice(0, 12)
    .map(({ way }) => way);
}

function conflicts(placed: Placed[], component: (node: number) => number): [Placed, Placed][] {
  return placed.flatMap((a, k) =>
    placed
      .slice(k + 1)
      .filter((b) => neverJoined(a, b) && component(a.node) === component(b.node))
      .map((b): [Placed, Placed] => [a, b]),
  );
}

function tell(found: Case, { way, pairs, alone }: Parting): Finding {
  const { wiring, card, traced } = found;
  const usual = way.piece > 0 ? traced.pieces[way.piece - 1].widthMm : Infinity;
  const sliver = way.piece > 0 && way.widthMm < sliverShare * usual;
  const [a, b] = strongest(pairs);
  const cell = pairs.some(([p, q]) => p.name.startsWith('cell') && q.name.startsWith('cell'));
  const lamps = [...new Set(pairs.flatMap(([p, q]) => [p.lamp, q.lamp]).flatMap((id) => id ?? []))];
  const under = pairs.every(([p, q]) => p.lamp !== undefined && p.lamp === q.lamp)
    ? card.lamps.find(({ id, plus, minus }) => {
        return lamps[0] === id && distance(way.narrowest, between(plus, minus)) < distance(plus, minus);
      })
    : undefined;
  const at: Point = under ? between(under.plus, under.minus) : way.across ? way.middle : way.narrowest;
  return {
    kind: under ? 'lamp-on-one-strip' : cell && !alone && !sliver ? 'shorted-cell' : 'bridge',
    at,
    ...(Number.isFinite(way.widthMm) ? { sizeMm: way.widthMm } : {}),
    certainty: certainty(way, sliver, alone, pairs),
    weight: 'holds',
    lamps,
    nets: [wiring.netOfIsland[wiring.graph.islandOf[way.from]]],
    sheet: sheetAt(card, at),
    facts: { between: a.name, and: b.name, shorts: cell, ...(way.join ? { join: way.join } : {}) },
  };
}

/** The pair that says most: the cell's faces, then the heaviest. */
function strongest(pairs: [Placed, Placed][]): [Placed, Placed] {
  return [...pairs].sort((p, q) => q[0].weight * q[1].weight - p[0].weight * p[1].weight)[0];
}

function certainty(way: Way, sliver: boolean, alone: boolean, pairs: [Placed, Placed][]): number {
  const evidence = pairs.reduce((sum, [a, b]) => sum + a.weight * b.weight, 0);
  const base = sliver && way.across ? 0.95 : sliver || way.across ? 0.88 : 0.75;
  return Math.max(0.3, base - (alone ? 0 : 0.15) - (evidence < 1 ? 0.1 : 0));
}
