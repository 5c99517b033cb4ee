import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { tapeBlindBeside } from '../blindBeside.ts';
import { bridgePlaces, type BridgePlace } from '../bridgePlaces.ts';
import type { Case } from '../case.ts';
import { sheetAt } from '../covered.ts';
import { between, distance, toSegment } from '../distance.ts';
import { isBlind } from '../../trace/index.ts';
import type { Finding } from '../types.ts';
import type { Placed, Way } from '../ways.ts';

/** A way narrower than this share of the strips it joins is a sliver or a splash, not a strip laid there. */
const sliverShare = 0.65;

/** Chance of a bridge where the picture is burnt out or black, so that paper between strips looks like them. */
const lostInGlare = 0.4;

/** Copper that joins what must stay apart: the sliver where there is one, else the lamp or the cell that lies across it. */
export function bridges(found: Case): Finding[] {
  const all = bridgePlaces(found).flatMap((place) => {
    if (place.ways.length > 0) return place.ways.map((way) => bridge(found, place, way));
    const lamps = place.pads.filter(({ lamp }) => lamp !== undefined);
    if (lamps.length > 0) return lamps.map((pad) => onOneStrip(found, pad));
    return [shorted(found, place)];
  });
  const same = (a: Finding, b: Finding) => a.kind === b.kind && distance(a.at, b.at) < 1;
  // A join that no picture shows is doubted only where no copper is seen to join the two.
  const seen = all.some(({ kind, facts }) => kind === 'bridge' && facts.join === undefined);
  return all
    .filter(({ facts }) => !seen || facts.join === undefined)
    .filter((each, k, left) => left.findIndex((other) => same(each, other)) === k);
}

function bridge(found: Case, { pairs }: BridgePlace, way: Way): Finding {
  const { wiring, traced } = found;
  const usual = way.piece > 0 ? traced.pieces[way.piece - 1].widthMm : 0;
  const sliver = way.widthMm < sliverShare * usual;
  const [a, b] = strongest(pairs);
  const under = beneathLamp(found, pairs, way);
  if (under) return onOneStrip(found, under);
  const beside = besidePlan(found.card, way);
  const at = beside?.at ?? (way.across ? way.middle : way.narrowest);
  const evidence = pairs.reduce((sum, [p, q]) => sum + p.weight * q.weight, 0);
  const base = sliver && way.across ? 0.95 : sliver || way.across ? 0.88 : 0.75;
  const lost = !way.join && (isBlind(traced, at) || tapeBlindBeside(traced, at));
  return {
    kind: 'bridge',
    at,
    ...(way.join ? {} : { sizeMm: beside?.mm ?? way.widthMm }),
    certainty: lost ? lostInGlare : base - (evidence < 1 ? 0.1 : 0),
    ...(lost ? { evidence: { by: 'unsure', value: lostInGlare } } : {}),
    weight: 'holds',
    lamps: lampsOf(pairs),
    nets: [wiring.netOfIsland[wiring.graph.islandOf[way.from]]],
    sheet: sheetAt(found.card, at),
    facts: {
      between: a.name,
      and: b.name,
      shorts: isCell(a) && isCell(b),
      ...(lost ? { unsure: true } : {}),
      ...(way.join ? { join: way.join } : {}),
    },
  };
}

/** Copper is beside the plan from so far on, mm, beyond a strip's own border. */
const besideMm = 0.8;

/** Where a way leads farthest from all that is planned: there the bridge lies, whatever is narrow elsewhere on it. */
function besidePlan({ plan }: Card, { path, widths }: Way): { at: Point; mm: number } | undefined {
  const off = path.map((p) =>
    Math.min(
      ...(plan?.strips ?? []).flatMap(({ path: line, width_mm }) =>
        line.slice(1).map((q, k) => toSegment(p, line[k], q) - width_mm / 2),
      ),
    ),
  );
  const most = Math.max(...off);
  if (!Number.isFinite(most) || most < besideMm) return undefined;
  const k = off.indexOf(most);
  return { at: path[k], mm: widths[k] };
}

/** The pad whose lamp lies over the way, where nothing but that lamp is joined by it. */
function beneathLamp({ card }: Case, pairs: [Placed, Placed][], way: Way): Placed | undefined {
  const [pad] = pairs[0];
  if (!pairs.every(([p, q]) => p.lamp !== undefined && p.lamp === pad.lamp && q.lamp === pad.lamp))
    return undefined;
  const lamp = card.lamps.find(({ id }) => id === pad.lamp)!;
  const [x, y] = between(lamp.plus, lamp.minus);
  const spacing = Math.hypot(lamp.plus[0] - lamp.minus[0], lamp.plus[1] - lamp.minus[1]);
  return Math.hypot(way.narrowest[0] - x, way.narrowest[1] - y) < spacing ? pad : undefined;
}

function onOneStrip({ card, wiring }: Case, { lamp: id, name }: Placed): Finding {
  const lamp = card.lamps.find((each) => each.id === id)!;
  const at = between(lamp.plus, lamp.minus);
  return {
    kind: 'lamp-on-one-strip',
    at,
    certainty: 0.88,
    weight: 'holds',
    lamps: [lamp.id],
    nets: [wiring.netOf[name]],
    sheet: sheetAt(card, at),
    facts: {},
  };
}

/** Both faces on one copper and no single place to cut. */
function shorted({ card, wiring }: Case, { pairs }: BridgePlace): Finding {
  const [a, b] = strongest(pairs);
  const cell = isCell(a) && isCell(b);
  const at = cell && card.cell ? card.cell.at : between(a.at, b.at);
  return {
    kind: cell ? 'shorted-cell' : 'bridge',
    at,
    certainty: 0.75,
    weight: 'holds',
    lamps: lampsOf(pairs),
    nets: [wiring.netOfIsland[wiring.graph.islandOf[a.node]]],
    sheet: sheetAt(card, at),
    facts: { between: a.name, and: b.name, shorts: cell },
  };
}

function isCell({ name }: Placed): boolean {
  return name === 'cell+' || name === 'cell-';
}

function lampsOf(pairs: [Placed, Placed][]): string[] {
  return [...new Set(pairs.flatMap(([a, b]) => [a.lamp, b.lamp]).flatMap((id) => id ?? []))];
}

/** The pair that says most: the cell's faces, then the heaviest. */
function strongest(pairs: [Placed, Placed][]): [Placed, Placed] {
  return [...pairs].sort((p, q) => q[0].weight * q[1].weight - p[0].weight * p[1].weight)[0];
}
