import { rootOf } from '../lab.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask } from '../types.ts';
import type { AxisPlace } from './axis.ts';

/**
 * The picture round a place on a strip's axis, straightened: rows run along the strip, columns across it, of which only
 * some are taken.
 */
export interface Window {
  /** Rows on each side of the middle one. */
  reach: number;
  rows: number;
  /** Tenths of a millimetre across the strip from its axis, of each column: first paper on the one side, then the strip, then paper on the other. */
  columns: Float32Array;
  /** The strip's columns: from, and to before which. */
  from: number;
  to: number;
  /** L*, a*, b* and the mask's chance of copper, row-major [row * columns + column]. */
  L: Float32Array;
  a: Float32Array;
  b: Float32Array;
  chance: Uint8Array;
  /** 1 = copper of the mask; beyond the sheet 1 too: what is not seen is no paper. */
  copper: Uint8Array;
}

/** Tenths of a millimetre beyond the strip's border in which its paper is looked for, in steps. */
const mouth = { from: 3, to: 15, step: 3 };
/** Columns of a strip, most, and tenths of a millimetre between them. */
const mostColumns = 20;
const columnStep = 3;

const root = new Float32Array(3);

/** @param unit px of the sheet that are a tenth of a millimetre */
export function windowAt(
  place: AxisPlace,
  reach: number,
  mask: CopperMask,
  sheet: SquaredSheet,
  unit: number,
): Window {
  const { columns, from, to } = columnsOf(place.half / unit);
  const count = columns.length;
  const rows = 2 * reach + 1;
  const [L, a, b] = [0, 1, 2].map(() => new Float32Array(rows * count));
  const chance = new Uint8Array(rows * count);
  const copper = new Uint8Array(rows * count).fill(1);
  const { width, height, filled, likelihood } = mask;
  const { along, across } = place;
  for (let s = -reach, n = 0; s <= reach; s++) {
    const [x, y] = [place.x + s * unit * along[0], place.y + s * unit * along[1]];
    for (let t = 0; t < count; t++, n++) {
      const i = Math.floor(x + columns[t] * unit * across[0]);
      const j = Math.floor(y + columns[t] * unit * across[1]);
      if (i < 0 || j < 0 || i >= width || j >= height) continue;
      const k = j * width + i;
      rootOf(sheet.rgb, 3 * k, root);
      L[n] = 116 * root[1] - 16;
      a[n] = 500 * (root[0] - root[1]);
      b[n] = 200 * (root[1] - root[2]);
      chance[n] = likelihood[k];
      copper[n] = filled[k];
    }
  }
  return { reach, rows, columns, from, to, L, a, b, chance, copper };
}

function columnsOf(half: number): Pick<Window, 'columns' | 'from' | 'to'> {
  const beside: number[] = [];
  for (let off = mouth.from; off <= mouth.to; off += mouth.step) beside.push(half + off);
  const inner = half - 1.5;
  const count = Math.max(7, Math.min(mostColumns, Math.floor((2 * inner) / columnStep) + 1));
  const own = Array.from({ length: count }, (_, n) => -inner + (2 * inner * n) / (count - 1));
  const before = beside.map((off) => -off);
  return {
    columns: Float32Array.from([...before, ...own, ...beside]),
    from: before.length,
    to: before.length + count,
  };
}

/** The row of a slanted line at a column. @param row of the line on the strip's axis, from the window's middle one */
export const rowOf = ({ reach, columns }: Window, row: number, slope: number, t: number): number =>
  Math.round(reach + row + slope * columns[t]);
