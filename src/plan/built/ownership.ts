import type { Point } from '../../geometry/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { boxOf, distanceToRibbon, segmentsOf } from '../strip/ribbon.ts';

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

/** Paints every ribbon, widened by `beyond` mm a side, stretch by stretch: a rail's box is most of the sheet. */
export function ownership(ribbons: Ribbon[], beyond: number, traced: Traced, cellsPerMm = 4): Ownership {
  const width = Math.ceil((traced.width / traced.pxPerMm) * cellsPerMm);
  const height = Math.ceil((traced.height / traced.pxPerMm) * cellsPerMm);
  const owner = new Uint16Array(width * height);
  const [ox, oy] = traced.originMm;
  for (const [index, { path, widthMm }] of ribbons.entries()) {
    for (const stretch of segmentsOf(path)) {
      const reach = widthMm / 2 + beyond;
      const box = boxOf(stretch, reach);
      const [a, b] = stretch;
      // The corner between two stretches is round.
      const ribbon = { path: [a, b], widthMm };
      const i1 = Math.min(width - 1, Math.ceil((box.x1 - ox) * cellsPerMm));
      const j1 = Math.min(height - 1, Math.ceil((box.y1 - oy) * cellsPerMm));
      for (let j = Math.max(0, Math.floor((box.y0 - oy) * cellsPerMm)); j <= j1; j++) {
        for (let i = Math.max(0, Math.floor((box.x0 - ox) * cellsPerMm)); i <= i1; i++) {
          const at: Point = [ox + (i + 0.5) / cellsPerMm, oy + (j + 0.5) / cellsPerMm];
          const corner = a !== path[0] && Math.hypot(at[0] - a[0], at[1] - a[1]) <= reach;
          if (!corner && distanceToRibbon(at, ribbon) > beyond) continue;
          const before = owner[j * width + i];
          owner[j * width + i] = before && before !== index + 1 ? SEVERAL : index + 1;
        }
      }
    }
  }
  return { width, height, cellsPerMm, originMm: traced.originMm, owner };
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
