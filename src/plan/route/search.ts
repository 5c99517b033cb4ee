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

/**
 * Cheapest path from a net's tree to the nearest of its goals.
 * @param cost extra cost of each node, mm; Infinity bars it
 * @param outward the way out of a first pad's lead: the path may not fold back on it
 * @returns nodes from tree to goal, or undefined where there is no way
 * @source maze search: Lee, "An algorithm for path connections and its applications", IRE Trans. EC-10 (1961), with the
 *   costs of Dijkstra 1959
 */
export function searchPath(
  grid: RouteGrid,
  tree: Iterable<number>,
  goals: Goal[],
  cost: Float32Array,
  outward?: readonly [number, number],
): { path: number[]; goal: Goal } | undefined {
  const { nx, ny, pitch } = grid;
  const best = new Float64Array(nx * ny).fill(Infinity);
  const from = new Int32Array(nx * ny).fill(-1);
  const heading = new Int8Array(nx * ny).fill(-1);
  const wanted = new Map(goals.map((goal) => [goal.node, goal]));
  const queue = new NodeQueue();
  for (const node of tree) {
    best[node] = 0;
    queue.push(0, node);
  }
  for (let top = queue.pop(); top; top = queue.pop()) {
    const { key, node } = top;
    if (key > best[node]) continue;
    const goal = wanted.get(node);
    if (goal) return { path: pathTo(node, from), goal };
    const x = node % nx;
    const y = (node - x) / nx;
    for (let d = 0; d < 8; d++) {
      const turn = heading[node] < 0 ? 0 : Math.min((d - heading[node] + 8) & 7, (heading[node] - d + 8) & 7);
      if (turn > 2 || (heading[node] < 0 && foldsBack(outward, d))) continue;
      const X = x + STEPS[d][0];
      const Y = y + STEPS[d][1];
      if (X < 0 || Y < 0 || X >= nx || Y >= ny) continue;
      const next = Y * nx + X;
      const length = pitch * (d & 1 ? Math.SQRT2 : 1);
      const way = key + length + cost[next] + (turn ? FOLD_MM : 0);
      if (way >= best[next] || foldsBack(wanted.get(next)?.inward, d)) continue;
      best[next] = way;
      from[next] = node;
      heading[next] = d;
      queue.push(way, next);
    }
  }
  return undefined;
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
