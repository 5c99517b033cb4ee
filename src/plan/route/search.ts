import type { RouteGrid } from './grid.ts';
import { NodeQueue } from './heap.ts';

/** Steps to the eight neighbours, by direction 0..7 clockwise from east; odd ones are diagonal. */
const STEPS = [
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
  [0, -1],
  [1, -1],
] as const;

/** Cost of a step in each direction, grid pitches. */
const LENGTHS = STEPS.map(([x, y]) => Math.hypot(x, y));

/** By heading * 8 + direction: eighths of a turn between them, 0..4. */
const TURNS = Uint8Array.from({ length: 64 }, (_, k) =>
  Math.min(((k & 7) - (k >> 3)) & 7, ((k >> 3) - k) & 7),
);

/** Length in mm that a fold of 45 or 90 degrees is worth avoiding. */
const FOLD_MM = 5;

export interface Goal {
  node: number;
  /** Unit vector of the last piece, from the node to its pad: the way in may not fold back on it. */
  inward?: readonly [number, number];
}

/** Room to search in, made once for all searches on a grid. */
export interface Scratch {
  /** Least cost of each node so far, mm. */
  best: Float64Array;
  /** The least that its way to the nearest goal can cost, mm; -1 where not yet reckoned. */
  left: Float64Array;
  /** The node before it, or -1. */
  from: Int32Array;
  /** Direction of the last step, or -1. */
  heading: Int8Array;
  done: Uint8Array;
  /** Bit d: a goal that may not be entered in direction d. */
  shut: Uint8Array;
  isGoal: Uint8Array;
  queue: NodeQueue;
}

export function scratchFor({ nx, ny }: RouteGrid): Scratch {
  const n = nx * ny;
  return {
    best: new Float64Array(n),
    left: new Float64Array(n),
    from: new Int32Array(n),
    heading: new Int8Array(n),
    done: new Uint8Array(n),
    shut: new Uint8Array(n),
    isGoal: new Uint8Array(n),
    queue: new NodeQueue(),
  };
}

/**
 * Cheapest path from a net's tree to the nearest of its goals.
 * @param cost extra cost of each node, mm; Infinity bars it
 * @param outward the way out of a first pad's lead: the path may not fold back on it
 * @returns nodes from tree to goal, or undefined where there is no way
 * @source maze search: Lee, "An algorithm for path connections and its applications", IRE Trans. EC-10 (1961); led to
 *   the goals by their distance: Hart, Nilsson and Raphael, IEEE Trans. SSC-4 (1968)
 */
export function searchPath(
  grid: RouteGrid,
  scratch: Scratch,
  tree: Iterable<number>,
  goals: Goal[],
  cost: Float32Array,
  outward?: readonly [number, number],
): { path: number[]; goal: Goal } | undefined {
  const { nx, pitch } = grid;
  const { best, from, heading, done, isGoal, shut, queue } = scratch;
  prepare(scratch, goals);
  const left = distanceLeft(grid, goals, scratch.left);
  const lengths = Float64Array.from(LENGTHS, (length) => pitch * length);
  const moves = Int32Array.from(STEPS, ([dx, dy]) => dy * nx + dx);
  const shutOut = foldingBack(outward);
  for (const node of tree) {
    best[node] = 0;
    queue.push(left(node), node);
  }
  for (let node = queue.pop(); node >= 0; node = queue.pop()) {
    if (done[node]) continue;
    done[node] = 1;
    if (isGoal[node]) return { path: pathTo(node, from), goal: goals.find((goal) => goal.node === node)! };
    const soFar = best[node];
    const head = heading[node];
    // The rim is barred to every net, so that no neighbour lies off the grid.
    for (let d = 0; d < 8; d++) {
      const next = node + moves[d];
      if (best[next] <= soFar) continue;
      const turn = head < 0 ? 0 : TURNS[8 * head + d];
      if (turn > 2 || (head < 0 && (shutOut >> d) & 1)) continue;
      const way = soFar + lengths[d] + cost[next] + (turn ? FOLD_MM : 0);
      if (way >= best[next] || (shut[next] >> d) & 1) continue;
      best[next] = way;
      from[next] = node;
      heading[next] = d;
      queue.push(way + left(next), next);
    }
  }
  return undefined;
}

function prepare({ best, left, from, heading, done, shut, isGoal, queue }: Scratch, goals: Goal[]): void {
  best.fill(Infinity);
  left.fill(-1);
  from.fill(-1);
  heading.fill(-1);
  done.fill(0);
  shut.fill(0);
  isGoal.fill(0);
  queue.clear();
  // Of two goals at one node the first is the one that is reached.
  for (const { node, inward } of [...goals].reverse()) {
    isGoal[node] = 1;
    shut[node] = foldingBack(inward);
  }
}

/** The least that a node's way to the nearest goal can cost: its length along eight directions, mm. */
function distanceLeft(
  { nx, pitch }: RouteGrid,
  goals: Goal[],
  known: Float64Array,
): (node: number) => number {
  const xs = Float64Array.from(goals, ({ node }) => node % nx);
  const ys = Float64Array.from(goals, ({ node }) => Math.floor(node / nx));
  const diagonal = Math.SQRT2 - 1;
  return (node) => {
    if (known[node] >= 0) return known[node];
    const x = node % nx;
    const y = (node - x) / nx;
    let least = Infinity;
    for (let k = 0; k < xs.length; k++) {
      const dx = Math.abs(xs[k] - x);
      const dy = Math.abs(ys[k] - y);
      const far = dx > dy ? dx + diagonal * dy : dy + diagonal * dx;
      if (far < least) least = far;
    }
    return (known[node] = pitch * least);
  };
}

/** Bit d: a step in direction d folds back on a lead. */
function foldingBack(lead: readonly [number, number] | undefined): number {
  if (!lead) return 0;
  return STEPS.reduce(
    (bits, [dx, dy], d) => ((dx * lead[0] + dy * lead[1]) / LENGTHS[d] < -0.1 ? bits | (1 << d) : bits),
    0,
  );
}

function pathTo(goal: number, from: Int32Array): number[] {
  const path = [goal];
  while (from[path[path.length - 1]] >= 0) path.push(from[path[path.length - 1]]);
  return path.reverse();
}
