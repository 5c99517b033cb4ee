import type { Point } from '../geometry/index.ts';
import type { Case } from './case.ts';
import { terminals, type Terminal } from './terminals.ts';
import { disjointSets } from './unionFind.ts';

/** A stretch of copper, or a join that no mask shows, as an edge that can be opened in thought. */
export interface Way {
  from: number;
  to: number;
  /** 0 for a join. */
  piece: number;
  widthMm: number;
  narrowest: Point;
  middle: Point;
  /** Its line and the width at each point, mm; a join has none. */
  path: Point[];
  widths: number[];
  /** Runs from the side of one strip to the side of another. */
  across: boolean;
  /** Why it conducts where no copper shows. */
  join?: string;
  open: boolean;
}

/** A terminal on its node of the graph. */
export interface Placed extends Terminal {
  node: number;
}

/** Component of each node by the ways that are not open. */
export function liveComponents(ways: readonly Way[], nodes: number): (node: number) => number {
  const sets = disjointSets(nodes);
  for (const { from, to, open } of ways) if (!open) sets.join(from, to);
  return (node) => sets.find(node);
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
    path: stretch.path,
    widths: stretch.widths,
    across: degree[stretch.from] > 2 && degree[stretch.to] > 2,
    open: false,
  }));
  const nodeOfIsland = new Map<number, number>();
  graph.islandOf.forEach((island, node) => nodeOfIsland.set(island, node));
  for (const { a, b, at, why } of joins) {
    const [from, to] = [nodeOfIsland.get(a)!, nodeOfIsland.get(b)!];
    const join = {
      piece: 0,
      widthMm: joinMm,
      narrowest: at,
      middle: at,
      path: [],
      widths: [],
      across: false,
      join: why,
      open: false,
    };
    ways.push({ from, to, ...join });
  }
  const placed = terminals(found).map((terminal): Placed => ({
    ...terminal,
    node: graph.nodeOfPad.get(terminal.name) ?? nodeNear(found, terminal),
  }));
  return { ways, placed };
}

/** A join counts as much as copper so wide, mm. */
const joinMm = 4;

/** The nearer end of the stretch that runs nearest. */
function nodeNear({ wiring }: Case, { piece, at }: Terminal): number {
  const { stretches, islandOf, islands } = wiring.graph;
  let node = -1;
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
  return node >= 0 ? node : islandOf.findIndex((island) => islands[island].piece === piece);
}
