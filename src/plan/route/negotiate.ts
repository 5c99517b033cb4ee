import type { Point } from '../../geometry/index.ts';
import type { RouteGrid } from './grid.ts';
import { barNear, layGrid, nodeAt, placeOf } from './grid.ts';
import type { Goal, Scratch } from './search.ts';
import { scratchFor, searchPath } from './search.ts';
import type { RouteNet, RouteTask, Rule, Terminal } from './types.ts';

/** A net's branches, each from the tree to a pad, places in mm. */
export interface Tree {
  net: RouteNet;
  branches: { terminal: Terminal; path: Point[] }[];
}

export interface Negotiated {
  trees: Tree[];
  /** No two nets come nearer than the clearance. */
  clear: boolean;
  /** A net had a pad that it could not reach at all. */
  stuck: boolean;
}

/** How long to haggle. */
export interface Effort {
  rounds: number;
  /** Rounds without a new best before the tape is given up as too wide. */
  patience: number;
  /** The price of trespass is multiplied by this each round. */
  rise: number;
}

/** Cost of the first trespass into another net's room, mm; it rises with every round. */
const TRESPASS_MM = 4;
const GRUDGE_MM = 3;

/**
 * Trees for all nets that keep clear of one another: each is laid over the others' room at a price, the price of room
 * that two nets want rises round by round, until no two want the same.
 * @source negotiated congestion: McMurchie and Ebeling, "PathFinder", FPGA '95; trees by nearest pad:
 *   Takahashi and Matsuyama, Math. Japonica 24 (1980)
 */
export function negotiate(task: RouteTask, rule: Rule, effort: Effort): Negotiated {
  const grid = layGrid(task, rule);
  const scratch = scratchFor(grid);
  const apart = rule.widthMm + rule.clearanceMm;
  const room = task.nets.map(() => new Uint8Array(grid.nx * grid.ny));
  const wanted = new Uint8Array(grid.nx * grid.ny);
  const grudge = new Float32Array(grid.nx * grid.ny);
  const walled = (k: number) => task.nets[k].terminals.some(({ from }) => grid.barred[k][nodeAt(grid, from)]);
  if (task.nets.some((_, k) => walled(k))) return { trees: [], clear: false, stuck: true };
  const trees: (Tree | undefined)[] = task.nets.map(() => undefined);
  let price = TRESPASS_MM;
  let fewest = Infinity;
  let since = 0;
  for (let round = 0; round < effort.rounds; round++) {
    let clashes = 0;
    for (const [k, net] of task.nets.entries()) {
      leave(wanted, room[k]);
      const laid = layTree(net, grid, scratch, costs(grid, k, wanted, grudge, price), rule.widthMm);
      if (!laid) return { trees: trees.filter((t) => t !== undefined), clear: false, stuck: true };
      trees[k] = laid.tree;
      for (const node of laid.nodes) {
        if (!wanted[node]) continue;
        grudge[node] += GRUDGE_MM;
        clashes++;
      }
      take(wanted, room[k], laid.tree, grid, apart);
    }
    if (!clashes) return { trees: trees as Tree[], clear: true, stuck: false };
    since = clashes < fewest ? 0 : since + 1;
    fewest = Math.min(fewest, clashes);
    if (since >= effort.patience) break;
    price *= effort.rise;
  }
  return { trees: trees as Tree[], clear: false, stuck: false };
}

function leave(wanted: Uint8Array, room: Uint8Array): void {
  for (let k = 0; k < room.length; k++) wanted[k] -= room[k];
  room.fill(0);
}

function take(
  wanted: Uint8Array,
  room: Uint8Array,
  { branches }: Tree,
  grid: RouteGrid,
  apart: number,
): void {
  for (const { path } of branches) {
    for (let k = 1; k < path.length; k++) barNear(room, grid, path[k - 1], path[k], apart);
  }
  for (let k = 0; k < room.length; k++) wanted[k] += room[k];
}

function costs(
  grid: RouteGrid,
  k: number,
  wanted: Uint8Array,
  grudge: Float32Array,
  price: number,
): Float32Array {
  const cost = new Float32Array(wanted.length);
  for (let node = 0; node < cost.length; node++) {
    if (grid.barred[k][node]) cost[node] = Infinity;
    else if (wanted[node]) cost[node] = grudge[node] + price * wanted[node];
  }
  return cost;
}

/** Grows a net's tree pad by pad, the nearest first. */
function layTree(
  net: RouteNet,
  grid: RouteGrid,
  scratch: Scratch,
  cost: Float32Array,
  widthMm: number,
): { tree: Tree; nodes: number[] } | undefined {
  const goals = net.terminals.map((terminal) => ({ terminal, goal: goalOf(terminal, grid) }));
  const [first, ...rest] = goals;
  const nodes = new Set([first.goal.node]);
  const branches: Tree['branches'] = [];
  let open = rest;
  let start: Terminal | undefined = first.terminal;
  while (open.length) {
    const found = searchPath(
      grid,
      scratch,
      nodes,
      open.map(({ goal }) => goal),
      cost,
      start && outwardOf(start),
    );
    if (!found) return undefined;
    const { terminal } = open.find(({ goal }) => goal === found.goal)!;
    open = open.filter(({ goal }) => goal !== found.goal);
    for (const node of found.path) nodes.add(node);
    let places = corners(found.path.map((node) => placeOf(grid, node)));
    if (start) places = intoPad(places.reverse(), start).reverse();
    const path = withoutHairs(intoPad(places, terminal));
    const onBarePad = found.path[0] === first.goal.node && !outwardOf(first.terminal);
    branches.push({ terminal, path: onBarePad ? lapped(path, LAP_PER_WIDTH * widthMm) : path });
    start = undefined;
  }
  return { tree: { net, branches }, nodes: [...nodes] };
}

/** Strips that leave a pad without a lead in opposite directions lap each other by twice this share of their width. */
const LAP_PER_WIDTH = 0.3;

/** The path begun so much earlier, so that its cut end lies on the copper of others that begin at the same place. */
function lapped([first, next, ...rest]: Point[], by: number): Point[] {
  const length = Math.hypot(next[0] - first[0], next[1] - first[1]);
  if (!length) return [first, next, ...rest];
  const back = (k: 0 | 1) => first[k] - ((next[k] - first[k]) / length) * by;
  return [[back(0), back(1)], next, ...rest];
}

function goalOf({ at, from }: Terminal, grid: RouteGrid): Goal {
  const length = Math.hypot(at[0] - from[0], at[1] - from[1]);
  const node = nodeAt(grid, from);
  return length ? { node, inward: [(at[0] - from[0]) / length, (at[1] - from[1]) / length] } : { node };
}

/** Unit vector out of a pad along its lead. */
function outwardOf({ at, from }: Terminal): [number, number] | undefined {
  const length = Math.hypot(at[0] - from[0], at[1] - from[1]);
  return length ? [(from[0] - at[0]) / length, (from[1] - at[1]) / length] : undefined;
}

/** Leaves out places that lie a hair before the next. */
function withoutHairs(path: Point[]): Point[] {
  return path.filter((p, k) => {
    const next = path[k + 1];
    return !next || k === 0 || Math.hypot(next[0] - p[0], next[1] - p[1]) > 0.1;
  });
}

/** Leaves out places on a straight line. */
function corners(path: Point[]): Point[] {
  return path.filter((p, k) => {
    if (k === 0 || k === path.length - 1) return true;
    const [a, b] = [path[k - 1], path[k + 1]];
    return (p[0] - a[0]) * (b[1] - p[1]) !== (p[1] - a[1]) * (b[0] - p[0]);
  });
}

/**
 * Ends a grid path in a pad: the last of its pieces that is not parallel to the pad's own lead runs on or stops short
 * until it meets the lead, so that no skew step is left where pad and grid do not fall together. A pad without a lead is
 * entered as the path came.
 */
function intoPad(path: Point[], { at, from }: Terminal): Point[] {
  if (path.length < 2) return [...path, at];
  const [q, p] = path.slice(-2);
  const leads = at[0] !== from[0] || at[1] !== from[1];
  const [ux, uy] = leads ? [at[0] - from[0], at[1] - from[1]] : [p[0] - q[0], p[1] - q[1]];
  const length = Math.hypot(ux, uy);
  for (let k = path.length - 1; k > 0; k--) {
    const [dx, dy] = [path[k][0] - path[k - 1][0], path[k][1] - path[k - 1][1]];
    const cross = (dx * uy - dy * ux) / (Math.hypot(dx, dy) * length);
    if (Math.abs(cross) < 0.3) continue;
    const t = ((at[0] - path[k][0]) * uy - (at[1] - path[k][1]) * ux) / (cross * length * Math.hypot(dx, dy));
    return [...path.slice(0, k), [path[k][0] + t * dx, path[k][1] + t * dy], at];
  }
  const s = ((path[0][0] - at[0]) * ux + (path[0][1] - at[1]) * uy) / length ** 2;
  return [[at[0] + s * ux, at[1] + s * uy], at];
}
