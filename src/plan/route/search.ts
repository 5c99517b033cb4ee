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
  /** The node before it, or -1. */
  from: Int32Array;
  /** Direction of the last step, or -1. */
  heading: Int8Array;
  done: Uint8Array;
  isGoal: Uint8Array;
}

export function scratchFor({ nx, ny }: RouteGrid): Scratch {
  const n = nx * ny;
  return {
    best: new Float64Array(n),
    from: new Int32Array(n),
    heading: new Int8Array(n),
    done: new Uint8Array(n),
    isGoal: new Uint8Array(n),
  };
}

/** Cost of a step in each direction, grid pitches. */
const LENGTHS = STEPS.map(([x, y]) => Math.hypot(x, y));

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
  const { nx, ny, pitch } = grid;
  const { best, from, heading, done, isGoal } = scratch;
  best.fill(Infinity);
  from.fill(-1);
  heading.fill(-1);
  done.fill(0);
  isGoal.fill(0);
  for (const { node } of goals) isGoal[node] = 1;
  const goalAt = (node: number) => goals.find((goal) => goal.node === node);
  const left = distanceLeft(grid, goals);
  const queue = new NodeQueue();
  for (const node of tree) {
    best[node] = 0;
    queue.push(left(node), node);
  }
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    if (done[node]) continue;
    done[node] = 1;
    if (isGoal[node]) return { path: pathTo(node, from), goal: goalAt(node)! };
    const x = node % nx;
    const y = (node - x) / nx;
    const head = heading[node];
    for (let d = 0; d < 8; d++) {
      const turn = head < 0 ? 0 : Math.min((d - head + 8) & 7, (head - d + 8) & 7);
      if (turn > 2 || (head < 0 && foldsBack(outward, d))) continue;
      const X = x + STEPS[d][0];
      const Y = y + STEPS[d][1];
      if (X < 0 || Y < 0 || X >= nx || Y >= ny) continue;
      const next = Y * nx + X;
      const way = best[node] + pitch * LENGTHS[d] + cost[next] + (turn ? FOLD_MM : 0);
      if (way >= best[next] || (isGoal[next] && foldsBack(goalAt(next)?.inward, d))) continue;
      best[next] = way;
      from[next] = node;
      heading[next] = d;
      queue.push(way + left(next), next);
    }
  }
  return undefined;
}

/** The least that a node's way to the nearest goal can cost: its length along eight directions, mm. */
function distanceLeft({ nx, pitch }: RouteGrid, goals: Goal[]): (node: number) => number {
  const xs = goals.map(({ node }) => node % nx);
  const ys = goals.map(({ node }) => Math.floor(node / nx));
  const diagonal = Math.SQRT2 - 1;
  return (node) => {
    const x = node % nx;
    const y = (node - x) / nx;
    let least = Infinity;
    for (let k = 0; k < xs.length; k++) {
      const dx = Math.abs(xs[k] - x);
      const dy = Math.abs(ys[k] - y);
      const far = dx > dy ? dx + diagonal * dy : dy + diagonal * dx;
      if (far < least) least = far;
    }
    return pitch * least;
  };
}

function foldsBack(lead: readonly [number, number] | undefined, d: number): boolean {
  if (!lead) return false;
  const [dx, dy] = STEPS[d];
  return (dx * lead[0] + dy * lead[1]) / Math.hypot(dx, dy) < -0.1;
}

function pathTo(goal: number, from: Int32Array): number[] {
  const path = [goal];
  while (from[path[path.length - 1]] >= 0) path.push(from[path[path.length - 1]]);
  return path.reverse();
}
