import { boxMean } from './boxMean.ts';
import type { RootPlanes } from './lab.ts';
import type { PaperField } from './paper.ts';

/**
 * Paper colour close to each place: the mean of the bare paper within a few millimetres, so that a wash or a shadow edge
 * that a strip crosses counts on its own ground. Far from any bare paper the wide field holds.
 * @param bare 1 where the small picture shows paper for certain
 * @param wide the field over 35 mm
 * @param cell side of a cell of `wide`, px of the small picture
 * @param reach px of the small picture
 */
export function flankPaper(small: RootPlanes, bare: Uint8Array, wide: PaperField, reach: number): PaperField {
  const { width, height } = small;
  const near = boxMean(bare, width, height, reach);
  const far = boxMean(bare, width, height, 3 * reach);
  const [fx, fy, fz] = (
    [
      ['fx', wide.fx],
      ['fy', wide.fy],
      ['fz', wide.fz],
    ] as const
  ).map(([name, field]) => {
    const masked = small[name].map((f, k) => (bare[k] ? f : 0));
    const sums = boxMean(masked, width, height, reach);
    const wider = boxMean(masked, width, height, 3 * reach);
    return sums.map((sum, k) => {
      if (near[k] > 0.06) return sum / near[k];
      if (far[k] > 0.03) return wider[k] / far[k];
      const i = Math.min(wide.columns - 1, Math.floor((k % width) / wide.cell));
      const j = Math.min(wide.rows - 1, Math.floor(Math.floor(k / width) / wide.cell));
      return field[j * wide.columns + i];
    });
  });
  return { columns: width, rows: height, cell: 1, fx, fy, fz };
}
