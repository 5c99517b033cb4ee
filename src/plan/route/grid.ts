import type { Point } from '../../geometry/index.ts';
import type { RouteTask, Rule } from './types.ts';

/** A square grid over the base with what is forbidden to each net. */
export interface RouteGrid {
  nx: number;
  ny: number;
  pitch: number;
  /** By net: 1 where its centre-line may not run. */
  barred: Uint8Array[];
}

export const PITCH_MM = 1;

export const nodeAt = (grid: { nx: number; ny: number; pitch: number }, [x, y]: Point): number => {
  const i = Math.max(0, Math.min(grid.nx - 1, Math.round(x / grid.pitch)));
  const j = Math.max(0, Math.min(grid.ny - 1, Math.round(y / grid.pitch)));
  return j * grid.nx + i;
};

export const placeOf = (grid: { nx: number; pitch: number }, node: number): Point => [
  (node % grid.nx) * grid.pitch,
  Math.floor(node / grid.nx) * grid.pitch,
];

/** Bars the rim, the obstacles, and the last pieces and pads of the other nets. */
export function layGrid(task: RouteTask, rule: Rule): RouteGrid {
  const nx = Math.floor(task.width / PITCH_MM) + 1;
  const ny = Math.floor(task.height / PITCH_MM) + 1;
  const grid: RouteGrid = { nx, ny, pitch: PITCH_MM, barred: [] };
  const half = rule.widthMm / 2;
  for (const net of task.nets) {
    const barred = new Uint8Array(nx * ny);
    barRim(barred, grid, task, task.edgeMm + half);
    for (const { a, b, keepMm, except } of task.obstacles) {
      if (!except?.includes(net.id)) barNear(barred, grid, a, b, keepMm + half);
    }
    for (const other of task.nets) {
      if (other === net) continue;
      for (const { at, from } of other.terminals)
        barNear(barred, grid, at, from, rule.widthMm + rule.clearanceMm);
    }
    grid.barred.push(barred);
  }
  return grid;
}

function barRim(barred: Uint8Array, grid: RouteGrid, { width, height }: RouteTask, keep: number): void {
  for (let node = 0; node < barred.length; node++) {
    const [x, y] = placeOf(grid, node);
    if (x < keep || y < keep || x > width - keep || y > height - keep) barred[node] = 1;
  }
}

/** Marks every node nearer than `keep` to a straight piece. */
export function barNear(
  marks: Uint8Array,
  grid: Omit<RouteGrid, 'barred'>,
  a: Point,
  b: Point,
  keep: number,
): void {
  const { nx, ny, pitch } = grid;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy || 1;
  const i0 = Math.max(0, Math.floor((Math.min(a[0], b[0]) - keep) / pitch));
  const i1 = Math.min(nx - 1, Math.ceil((Math.max(a[0], b[0]) + keep) / pitch));
  const j1 = Math.min(ny - 1, Math.ceil((Math.max(a[1], b[1]) + keep) / pitch));
  for (let j = Math.max(0, Math.floor((Math.min(a[1], b[1]) - keep) / pitch)); j <= j1; j++) {
    const y = j * pitch - a[1];
    for (let i = i0; i <= i1; i++) {
      const x = i * pitch - a[0];
      const t = Math.max(0, Math.min(1, (x * dx + y * dy) / square));
      if ((x - t * dx) ** 2 + (y - t * dy) ** 2 < keep * keep) marks[j * nx + i] = 1;
    }
  }
}
