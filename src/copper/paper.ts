import type { RootPlanes } from './lab.ts';

/** Local paper colour on a coarse grid of cells, in cube-root units. Cell (i, j) is centred at ((i + .5) cell, (j + .5) cell) pixels. */
export interface PaperField {
  columns: number;
  rows: number;
  /** Side of a cell in pixels of the planes it was taken from. */
  cell: number;
  fx: Float32Array;
  fy: Float32Array;
  fz: Float32Array;
}

/** Bins over f 0..1; within a bin the median is placed straight, so steps of 1/160 do not show. */
const bins = 160;
const binOf = (f: number): number => Math.min(bins - 1, (f * (bins - 1)) | 0);

/**
 * The paper's colour round each cell: the median of all that is not masked out within a square window. The light falls
 * off smoothly over a sheet and the tape covers the lesser part of any such window, so the median is paper.
 * @param planes a shrunken picture (about 2.5 px/mm is enough)
 * @param cell side of a grid cell, px
 * @param reach half the window's side, in cells
 * @param out 1 where a pixel must not count (copper, outside of the photograph), or undefined
 */
export function paperField(planes: RootPlanes, cell: number, reach: number, out?: Uint8Array): PaperField {
  const columns = Math.max(1, Math.ceil(planes.width / cell));
  const rows = Math.max(1, Math.ceil(planes.height / cell));
  const field = { columns, rows, cell };
  const [fx, fy, fz] = [planes.fx, planes.fy, planes.fz].map((plane) =>
    medianField(plane, planes.width, planes.height, field, reach, out),
  );
  return { ...field, fx, fy, fz };
}

function medianField(
  plane: Float32Array,
  width: number,
  height: number,
  grid: { columns: number; rows: number; cell: number },
  reach: number,
  out?: Uint8Array,
): Float32Array {
  const { columns, rows, cell } = grid;
  const counts = new Uint16Array(columns * rows * bins);
  for (let j = 0, k = 0; j < height; j++) {
    const row = Math.floor(j / cell) * columns;
    for (let i = 0; i < width; i++, k++) {
      if (out && out[k]) continue;
      counts[(row + Math.floor(i / cell)) * bins + binOf(plane[k])]++;
    }
  }
  const medians = new Float32Array(columns * rows);
  const column = new Int32Array(columns * bins);
  const window = new Int32Array(bins);
  const addRow = (j: number, sign: number): void => {
    if (j < 0 || j >= rows) return;
    const from = j * columns * bins;
    for (let k = 0; k < columns * bins; k++) column[k] += sign * counts[from + k];
  };
  const addColumn = (i: number, sign: number): void => {
    if (i < 0 || i >= columns) return;
    for (let b = 0; b < bins; b++) window[b] += sign * column[i * bins + b];
  };
  for (let j = -reach; j < reach; j++) addRow(j, 1);
  for (let j = 0; j < rows; j++) {
    addRow(j + reach, 1);
    addRow(j - reach - 1, -1);
    window.fill(0);
    for (let i = -reach; i < reach; i++) addColumn(i, 1);
    for (let i = 0; i < columns; i++) {
      addColumn(i + reach, 1);
      addColumn(i - reach - 1, -1);
      medians[j * columns + i] = medianOf(window);
    }
  }
  return fillHoles(medians, columns, rows);
}

/** Median of a histogram over 0..1, NaN when it is empty; straight within the bin. */
function medianOf(histogram: Int32Array): number {
  let total = 0;
  for (let b = 0; b < bins; b++) total += histogram[b];
  if (total === 0) return NaN;
  let below = 0;
  for (let b = 0; b < bins; b++) {
    const n = histogram[b];
    if (2 * (below + n) >= total) return (b + (total / 2 - below) / n) / (bins - 1);
    below += n;
  }
  return NaN;
}

/** Cells with nothing to count take the nearest known cells' value. */
function fillHoles(field: Float32Array, columns: number, rows: number): Float32Array {
  let missing = field.some(Number.isNaN);
  if (missing && field.every(Number.isNaN)) return field.fill(1);
  while (missing) {
    missing = false;
    const before = field.slice();
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < columns; i++) {
        if (!Number.isNaN(before[j * columns + i])) continue;
        let sum = 0;
        let n = 0;
        for (const [u, v] of [
          [1, 0],
          [-1, 0],
          [0, 1],
          [0, -1],
        ] as const) {
          if (i + u < 0 || i + u >= columns || j + v < 0 || j + v >= rows) continue;
          const near = before[(j + v) * columns + i + u];
          if (Number.isNaN(near)) continue;
          sum += near;
          n++;
        }
        if (n) field[j * columns + i] = sum / n;
        else missing = true;
      }
    }
  }
  return field;
}
