import type { Point, Segment } from '../../geometry/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { boxOf, segmentsOf } from '../strip/ribbon.ts';

/** Which planned ribbon has a place, on a coarse raster over the traced sheet. */
export interface Ownership {
  width: number;
  height: number;
  cellsPerMm: number;
  originMm: Point;
  /** 1 + index of the only ribbon there, 0 none, SEVERAL where they overlap. Row-major. */
  owner: Uint16Array;
}

export const SEVERAL = 65535;

/** The last two by what they were made of: the plan's own, which outlasts many taps, and those with the lamps. */
const kept = new Map<string, Ownership>();

/** Which ribbon, widened by `beyond` mm a side, has which place. */
export function ownership(ribbons: Ribbon[], beyond: number, traced: Traced, cellsPerMm = 4): Ownership {
  const { width, height, pxPerMm, originMm } = traced;
  const of = JSON.stringify([ribbons, beyond, width, height, pxPerMm, originMm, cellsPerMm]);
  const owners = kept.get(of) ?? paintAll(ribbons, beyond, traced, cellsPerMm);
  kept.delete(of);
  kept.set(of, owners);
  for (const oldest of kept.keys()) if (kept.size > 2) kept.delete(oldest);
  return owners;
}

/** Stretch by stretch: a rail's box is most of the sheet. */
function paintAll(ribbons: Ribbon[], beyond: number, traced: Traced, cellsPerMm: number): Ownership {
  const width = Math.ceil((traced.width / traced.pxPerMm) * cellsPerMm);
  const height = Math.ceil((traced.height / traced.pxPerMm) * cellsPerMm);
  const owner = new Uint16Array(width * height);
  const owners = { width, height, cellsPerMm, originMm: traced.originMm, owner };
  for (const [index, { path, widthMm }] of ribbons.entries()) {
    for (const [k, stretch] of segmentsOf(path).entries())
      paint(owners, stretch, widthMm / 2, beyond, k > 0, index + 1);
  }
  return owners;
}

/** One stretch: square at its ends, round at the corner where it begins. Plain sums, for this runs at every change of the plan. */
function paint(
  { width, height, cellsPerMm, originMm: [ox, oy], owner }: Ownership,
  stretch: Segment,
  half: number,
  beyond: number,
  corner: boolean,
  id: number,
): void {
  const [[ax, ay], [bx, by]] = stretch;
  const length = Math.hypot(bx - ax, by - ay);
  if (!length) return;
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  const reach = half + beyond;
  const box = boxOf(stretch, reach);
  const i0 = Math.max(0, Math.floor((box.x0 - ox) * cellsPerMm));
  const i1 = Math.min(width - 1, Math.ceil((box.x1 - ox) * cellsPerMm));
  const j1 = Math.min(height - 1, Math.ceil((box.y1 - oy) * cellsPerMm));
  for (let j = Math.max(0, Math.floor((box.y0 - oy) * cellsPerMm)); j <= j1; j++) {
    const dy = oy + (j + 0.5) / cellsPerMm - ay;
    for (let i = i0, k = j * width + i0; i <= i1; i++, k++) {
      const dx = ox + (i + 0.5) / cellsPerMm - ax;
      const along = dx * ux + dy * uy;
      const off = along < 0 ? -along : along > length ? along - length : 0;
      const out = Math.max(0, Math.abs(dx * uy - dy * ux) - half);
      const within = off * off + out * out <= beyond * beyond;
      if (!within && !(corner && dx * dx + dy * dy <= reach * reach)) continue;
      owner[k] = owner[k] && owner[k] !== id ? SEVERAL : id;
    }
  }
}

/** The ribbon that has a place: 1 + its index, 0 none, SEVERAL. */
export function ownerAt({ width, height, cellsPerMm, originMm, owner }: Ownership, [x, y]: Point): number {
  const i = Math.floor((x - originMm[0]) * cellsPerMm);
  const j = Math.floor((y - originMm[1]) * cellsPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return 0;
  return owner[j * width + i];
}

/** True where another ribbon than the one of this index has the place. */
export function othersAt(owners: Ownership, index: number, at: Point): boolean {
  const own = ownerAt(owners, at);
  return own !== 0 && own !== index + 1;
}
