import type { Point } from '../../geometry/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { boxOf, distanceToRibbon } from '../strip/ribbon.ts';

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
const CELLS_PER_MM = 4;

/** Paints every ribbon, widened by `beyond` mm a side. */
export function ownership(ribbons: Ribbon[], beyond: number, traced: Traced): Ownership {
  const width = Math.ceil((traced.width / traced.pxPerMm) * CELLS_PER_MM);
  const height = Math.ceil((traced.height / traced.pxPerMm) * CELLS_PER_MM);
  const owner = new Uint16Array(width * height);
  const [ox, oy] = traced.originMm;
  for (const [index, ribbon] of ribbons.entries()) {
    const box = boxOf(ribbon.path, ribbon.widthMm / 2 + beyond);
    const i1 = Math.min(width - 1, Math.ceil((box.x1 - ox) * CELLS_PER_MM));
    const j1 = Math.min(height - 1, Math.ceil((box.y1 - oy) * CELLS_PER_MM));
    for (let j = Math.max(0, Math.floor((box.y0 - oy) * CELLS_PER_MM)); j <= j1; j++) {
      for (let i = Math.max(0, Math.floor((box.x0 - ox) * CELLS_PER_MM)); i <= i1; i++) {
        const at: Point = [ox + (i + 0.5) / CELLS_PER_MM, oy + (j + 0.5) / CELLS_PER_MM];
        if (distanceToRibbon(at, ribbon) > beyond) continue;
        owner[j * width + i] = owner[j * width + i] ? SEVERAL : index + 1;
      }
    }
  }
  return { width, height, cellsPerMm: CELLS_PER_MM, originMm: traced.originMm, owner };
}

/** True where another ribbon than the one of this index has the place. */
export function othersAt(
  { width, height, cellsPerMm, originMm, owner }: Ownership,
  index: number,
  [x, y]: Point,
): boolean {
  const i = Math.floor((x - originMm[0]) * cellsPerMm);
  const j = Math.floor((y - originMm[1]) * cellsPerMm);
  if (i < 0 || j < 0 || i >= width || j >= height) return false;
  const own = owner[j * width + i];
  return own !== 0 && own !== index + 1;
}
