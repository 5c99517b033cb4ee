import type { Case } from './case.ts';
import { minCut, type Capacity } from './minCut.ts';
import { planSigns, type PlanSigns } from './planSigns.ts';
import { neverJoined } from './terminals.ts';
import { liveComponents, waysOf, type Placed, type Way } from './ways.ts';

/** What joins two things that must stay apart. */
export interface BridgePlace {
  pairs: [Placed, Placed][];
  /** The copper to cut; none where a single pad lies on the wrong copper. */
  ways: Way[];
  /** The pad or pads that lie on it. */
  pads: Placed[];
}

/** So many cuts at once are no bridge but copper laid all wrong. */
const mostWays = 3;
/** No more than this are told; after so many the card is read anew. */
const mostPlaces = 6;
/** A terminal holds to its copper as firmly as tape so wide, mm: wider than any tape, since a tap is rarely wrong. */
const tapMm = 6;

/**
 * Where copper joins what must stay apart: the cheapest cut, in mm of copper, between all that belongs to the one side
 * and all that belongs to the other. A sliver is cheaper than a rail; two slivers are both cut; one lamp that lies on
 * the wrong copper is cheaper to lift than a rail to cut.
 */
export function bridgePlaces(found: Case): BridgePlace[] {
  const { ways, placed } = waysOf(found);
  const signs = planSigns(found.card);
  const { nodes } = found.wiring.graph;
  const places: BridgePlace[] = [];
  const givenUp = new Set<string>();
  let left = placed.filter((each) => !standsForBoth(each, placed));
  while (places.length < mostPlaces) {
    const component = liveComponents(ways, nodes);
    const pair = firstPair(left, component, givenUp);
    if (!pair) break;
    const where = component(pair[0].node);
    const here = left.filter(({ node }) => component(node) === where);
    const place = cheapest(ways, component, where, here, pair, signs, nodes);
    places.push(place);
    for (const way of place.ways) way.open = true;
    left = left.filter((each) => !place.pads.includes(each));
    if (place.ways.length + place.pads.length === 0) givenUp.add(sidesOf(pair));
  }
  return places;
}

/** A stand-in for a planned net at a node where another stands for another net: the graph is too coarse there to tell which it is. */
function standsForBoth({ node, label }: Placed, placed: readonly Placed[]): boolean {
  const planned = (each: string): boolean => each.startsWith('plan:');
  return planned(label) && placed.some((o) => o.node === node && planned(o.label) && o.label !== label);
}

const sidesOf = ([a, b]: [Placed, Placed]): string => [a.label, b.label].sort().join(' ');

/** The gravest pair that is joined: the cell's faces first. @param givenUp sides that no few cuts part */
function firstPair(
  placed: Placed[],
  component: (node: number) => number,
  givenUp: ReadonlySet<string>,
): [Placed, Placed] | undefined {
  const order = [...placed].sort((a, b) => b.weight - a.weight);
  for (let i = 0; i < order.length; i++) {
    for (let j = i + 1; j < order.length; j++) {
      const [a, b] = [order[i], order[j]];
      const joined = neverJoined(a, b) && component(a.node) === component(b.node);
      if (joined && !givenUp.has(sidesOf([a, b]))) return [a, b];
    }
  }
  return undefined;
}

function cheapest(
  ways: Way[],
  component: (node: number) => number,
  where: number,
  here: Placed[],
  [a, b]: [Placed, Placed],
  signs: PlanSigns,
  nodes: number,
): BridgePlace {
  const source = nodes;
  const sink = nodes + 1;
  const live = ways.filter(({ open, from }) => !open && component(from) === where);
  const sides = here.filter(({ label }) => label === a.label || label === b.label);
  // Strips that the plan leads to one of the two sides hold to it too, though none is the pad to lift.
  const signOf = ({ label }: Placed): string | undefined => signs.ofNet(label.replace(/^plan:/, ''));
  const strips = here.filter((each) => [a.label, b.label].includes(signOf(each) ?? ''));
  // A face of the cell on a strip of the other says nothing of where the strips are joined.
  const astray = ({ name, label, at }: Placed): boolean =>
    name.startsWith('cell') && label !== (signs.at(at) ?? label);
  const edges: Capacity[] = [
    ...live.map((way, edge) => ({ from: way.from, to: way.to, capacity: costOf(way), edge })),
    ...[...sides, ...strips].map((each, k) => {
      const isSource = each.label === a.label || (each.label !== b.label && signOf(each) === a.label);
      const [from, to] = isSource ? [source, each.node] : [each.node, sink];
      const capacity = astray(each) && strips.length > 0 ? 0 : each.weight * tapMm;
      return { from, to, capacity, edge: live.length + k };
    }),
  ];
  const cut = minCut(nodes + 2, edges, source, sink);
  const cutWays = cut.filter((edge) => edge < live.length).map((edge) => live[edge]);
  // What holds nothing is no pad to lift beside copper to cut: it is asked again once that is open.
  const lifted = (each: Placed | undefined): each is Placed =>
    each !== undefined && !(cutWays.length > 0 && astray(each));
  const pads = cut.map((edge): Placed | undefined => sides[edge - live.length]).filter(lifted);
  const pairs = sides.flatMap((p, k) =>
    sides.slice(k + 1).flatMap((q): [Placed, Placed][] => (neverJoined(p, q) ? [[p, q]] : [])),
  );
  return { pairs, ways: cutWays.length > mostWays ? [] : cutWays, pads };
}

/** What runs from the side of one strip to the side of another is likelier the bridge than the strips. */
function costOf({ widthMm, across }: Way): number {
  return Math.max(0.05, widthMm) * (across ? 0.6 : 1);
}
