import type { Case } from './case.ts';
import { mustPart, terminals, type Terminal } from './terminals.ts';
import type { Way } from './ways.ts';

/** A terminal on its node of the graph. */
export interface Placed extends Terminal {
  node: number;
}

/** The copper as ways between nodes, every terminal on its node. */
export function waysOf(found: Case): { ways: Way[]; placed: Placed[] } {
  const { graph, joins } = found.wiring;
  const degree = new Int32Array(graph.nodes);
  for (const { from, to } of graph.stretches) {
    degree[from]++;
    degree[to]++;
  }
  const ways = graph.stretches.map((stretch): Way => ({
    from: stretch.from,
    to: stretch.to,
    piece: stretch.piece,
    widthMm: stretch.widthMm,
    narrowest: stretch.narrowest,
    middle: stretch.path[stretch.path.length >> 1],
    across: degree[stretch.from] > 2 && degree[stretch.to] > 2,
    open: false,
  }));
  const nodeOfIsland = new Map<number, number>();
  graph.islandOf.forEach((island, node) => nodeOfIsland.set(island, node));
  for (const { a, b, at, why } of joins) {
    const [from, to] = [nodeOfIsland.get(a)!, nodeOfIsland.get(b)!];
    const join = {
      piece: 0,
      widthMm: Infinity,
      narrowest: at,
      middle: at,
      across: false,
      join: why,
      open: false,
    };
    ways.push({ from, to, ...join });
  }
  const nodeAt = nearestNode(found);
  const placed = terminals(found).map((terminal): Placed => ({
    ...terminal,
    node: graph.nodeOfPad.get(terminal.name) ?? nodeAt(terminal),
  }));
  return { ways, placed };
}

/** The nearer end of the stretch that runs nearest. */
function nearestNode({ wiring }: Case): (terminal: Terminal) => number {
  const { stretches, islandOf } = wiring.graph;
  return ({ piece, at }) => {
    let node = 0;
    let least = Infinity;
    for (const stretch of stretches) {
      if (stretch.piece !== piece) continue;
      const { path } = stretch;
      for (let k = 0; k < path.length; k++) {
        const d = (path[k][0] - at[0]) ** 2 + (path[k][1] - at[1]) ** 2;
        if (d >= least) continue;
        least = d;
        node = 2 * k < path.length ? stretch.from : stretch.to;
      }
    }
    return least < Infinity
      ? node
      : Math.max(
          0,
          islandOf.findIndex((_, n) => wiring.graph.islands[islandOf[n]].piece === piece),
        );
  };
}

/** Tallies by label of the terminals on one side of a way. */
type Tally = Map<string, number>;

/**
 * What opening each way that alone holds its component together would part: weight of pairs that must stay apart less
 * that of pairs that belong together. Ways on a ring part nothing and are left out.
 * @source bridges of a graph by depth-first search with low links: Tarjan 1974
 */
export function partingGain(ways: readonly Way[], placed: readonly Placed[]): { way: Way; gain: number }[] {
  const around = new Map<number, { to: number; way: Way }[]>();
  const add = (from: number, to: number, way: Way) => {
    const list = around.get(from);
    if (list) list.push({ to, way });
    else around.set(from, [{ to, way }]);
  };
  for (const way of ways) {
    add(way.from, way.to, way);
    add(way.to, way.from, way);
  }
  const own = new Map<number, Placed[]>();
  for (const each of placed) own.set(each.node, [...(own.get(each.node) ?? []), each]);
  const whole = tally(placed);
  const gains: { way: Way; gain: number }[] = [];
  const start = ways[0]?.from;
  if (start === undefined) return gains;
  const order = new Map<number, number>([[start, 0]]);
  const low = new Map<number, number>([[start, 0]]);
  const below = new Map<number, Tally>();
  const stack: { node: number; by?: Way; next: number }[] = [{ node: start, next: 0 }];
  below.set(start, tally(own.get(start) ?? []));
  while (stack.length > 0) {
    const top = stack[stack.length - 1];
    const step = around.get(top.node)?.[top.next++];
    if (step) {
      if (step.way === top.by) continue;
      const seen = order.get(step.to);
      if (seen !== undefined) {
        low.set(top.node, Math.min(low.get(top.node)!, seen));
        continue;
      }
      order.set(step.to, order.size);
      low.set(step.to, order.get(step.to)!);
      below.set(step.to, tally(own.get(step.to) ?? []));
      stack.push({ node: step.to, by: step.way, next: 0 });
      continue;
    }
    stack.pop();
    const parent = stack[stack.length - 1];
    if (!parent || !top.by) continue;
    const here = below.get(top.node)!;
    low.set(parent.node, Math.min(low.get(parent.node)!, low.get(top.node)!));
    if (low.get(top.node)! > order.get(parent.node)!) gains.push({ way: top.by, gain: gainOf(here, whole) });
    const above = below.get(parent.node)!;
    for (const [label, weight] of here) above.set(label, (above.get(label) ?? 0) + weight);
  }
  return gains;
}

function tally(placed: readonly Placed[]): Tally {
  const sums: Tally = new Map();
  for (const { label, weight } of placed) sums.set(label, (sums.get(label) ?? 0) + weight);
  return sums;
}

function gainOf(side: Tally, whole: Tally): number {
  let gain = 0;
  for (const [label, weight] of side) {
    for (const [other, all] of whole) {
      const beyond = all - (side.get(other) ?? 0);
      if (mustPart(label, other)) gain += weight * beyond;
      else if (label === other) gain -= weight * beyond;
    }
  }
  return gain;
}
