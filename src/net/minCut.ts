/** An undirected edge with a capacity; `edge` is the caller's own number for it. */
export interface Capacity {
  from: number;
  to: number;
  capacity: number;
  edge: number;
}

interface Arc {
  to: number;
  left: number;
  back: number;
  edge: number;
}

/**
 * The cheapest set of edges that parts a source from a sink.
 *
 * @param nodes count of nodes, numbered from 0
 * @returns the callers' numbers of the cut edges
 * @source Ford and Fulkerson 1956; shortest augmenting paths, Edmonds and Karp 1972
 */
export function minCut(nodes: number, edges: readonly Capacity[], source: number, sink: number): number[] {
  const arcs: Arc[][] = Array.from({ length: nodes }, () => []);
  for (const { from, to, capacity, edge } of edges) {
    if (from === to) continue;
    arcs[from].push({ to, left: capacity, back: arcs[to].length, edge });
    arcs[to].push({ to: from, left: capacity, back: arcs[from].length - 1, edge });
  }
  for (let path = augment(arcs, source, sink); path; path = augment(arcs, source, sink)) {
    const flow = Math.min(...path.map(({ left }) => left));
    for (const arc of path) {
      arc.left -= flow;
      arcs[arc.to][arc.back].left += flow;
    }
  }
  const near = reach(arcs, source).seen;
  const cut = new Set<number>();
  for (const { from, to, edge } of edges) if (near[from] !== near[to]) cut.add(edge);
  return [...cut];
}

const none = 1e-9;

function reach(arcs: Arc[][], source: number): { seen: Uint8Array; by: (Arc | undefined)[] } {
  const seen = new Uint8Array(arcs.length);
  const by: (Arc | undefined)[] = new Array<Arc | undefined>(arcs.length);
  const queue = [source];
  seen[source] = 1;
  for (const node of queue) {
    for (const arc of arcs[node]) {
      if (seen[arc.to] || arc.left <= none) continue;
      seen[arc.to] = 1;
      by[arc.to] = arc;
      queue.push(arc.to);
    }
  }
  return { seen, by };
}

/** The arcs of a shortest path with capacity left, or undefined. */
function augment(arcs: Arc[][], source: number, sink: number): Arc[] | undefined {
  const { seen, by } = reach(arcs, source);
  if (!seen[sink]) return undefined;
  const path: Arc[] = [];
  for (let node = sink; node !== source;) {
    const arc = by[node]!;
    path.push(arc);
    node = arcs[arc.to][arc.back].to;
  }
  return path;
}
