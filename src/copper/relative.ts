import type { PaperField } from './paper.ts';
import type { RootPlanes } from './lab.ts';
import { darkestPaper } from './scores.ts';

/**
 * L*a*b* with the local paper as the white point: paper is (100, 0, 0) in light and in shade, on white and on kraft.
 * As f is a cube root, f(X / Xpaper) = f(X) / f(Xpaper).
 */
export interface RelativeLab {
  width: number;
  height: number;
  L: Float32Array;
  a: Float32Array;
  b: Float32Array;
}

/**
 * @param planes a picture, at any scale
 * @param field paper colour, taken from the same sheet
 * @param perCell side of a cell of the field in pixels of these planes
 */
export function relativeLab(planes: RootPlanes, field: PaperField, perCell: number): RelativeLab {
  const { width, height } = planes;
  const L = new Float32Array(width * height);
  const a = new Float32Array(width * height);
  const b = new Float32Array(width * height);
  const gains = [field.fx, field.fy, field.fz].map((plane) =>
    plane.map((f) => 1 / Math.max(darkestPaper, f)),
  );
  const row = gains.map(() => new Float32Array(width));
  for (let j = 0, k = 0; j < height; j++) {
    gains.forEach((gain, c) => interpolateRow(gain, field, perCell, j, row[c]));
    const [gx, gy, gz] = row;
    for (let i = 0; i < width; i++, k++) {
      const x = planes.fx[k] * gx[i];
      const y = planes.fy[k] * gy[i];
      const z = planes.fz[k] * gz[i];
      L[k] = 116 * y - 16;
      a[k] = 500 * (x - y);
      b[k] = 200 * (y - z);
    }
  }
  return { width, height, L, a, b };
}

/** Fills `into` with row j of a grid plane, bilinear between the cells' centres, held beyond the outermost. */
function interpolateRow(
  plane: Float32Array,
  grid: { columns: number; rows: number },
  perCell: number,
  j: number,
  into: Float32Array,
): void {
  const y = Math.min(grid.rows - 1, Math.max(0, (j + 0.5) / perCell - 0.5));
  const j0 = Math.min(grid.rows - 1, Math.floor(y));
  const up = j0 * grid.columns;
  const down = Math.min(grid.rows - 1, j0 + 1) * grid.columns;
  const v = y - j0;
  for (let i = 0; i < into.length; i++) {
    const x = Math.min(grid.columns - 1, Math.max(0, (i + 0.5) / perCell - 0.5));
    const i0 = x | 0;
    const i1 = Math.min(grid.columns - 1, i0 + 1);
    const u = x - i0;
    const top = plane[up + i0] * (1 - u) + plane[up + i1] * u;
    const low = plane[down + i0] * (1 - u) + plane[down + i1] * u;
    into[i] = top * (1 - v) + low * v;
  }
}
