import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import type { BlindMap } from './types.ts';

/** Side of a cell, mm, and the share of its pixels that must show nothing. */
const cellMm = 1;
const mostly = 0.6;
/** From this least of R, G and B on a pixel is burnt out: a mirror that blinds looks as white as paper. Under the greatest it is black. */
const burnt = 248;
const black = 10;

/** Where the picture is burnt out or black, so that copper and paper look alike. */
export function blindMap({ width, height, pxPerMm, rgb, originMm }: SquaredSheet): BlindMap {
  const side = Math.max(1, Math.round(cellMm * pxPerMm));
  const columns = Math.ceil(width / side);
  const rows = Math.ceil(height / side);
  const cells = new Uint8Array(columns * rows);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      let blind = 0;
      let all = 0;
      for (let y = j * side; y < Math.min(height, (j + 1) * side); y++) {
        for (let x = i * side; x < Math.min(width, (i + 1) * side); x++, all++) {
          const k = 3 * (y * width + x);
          const least = Math.min(rgb[k], rgb[k + 1], rgb[k + 2]);
          const greatest = Math.max(rgb[k], rgb[k + 1], rgb[k + 2]);
          if (least >= burnt || (greatest <= black && greatest > 0)) blind++;
        }
      }
      cells[j * columns + i] = blind >= mostly * all ? 1 : 0;
    }
  }
  return { columns, rows, cellMm: side / pxPerMm, originMm, cells };
}

/** Whether the photograph shows nothing at a place, mm; false where there is none. */
export function isBlind({ blind }: { blind?: BlindMap }, at: Point): boolean {
  if (!blind) return false;
  const i = Math.floor((at[0] - blind.originMm[0]) / blind.cellMm);
  const j = Math.floor((at[1] - blind.originMm[1]) / blind.cellMm);
  if (i < 0 || j < 0 || i >= blind.columns || j >= blind.rows) return false;
  return blind.cells[j * blind.columns + i] === 1;
}
