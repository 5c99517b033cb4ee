import { rootOf, type CopperMask } from '../copper/index.ts';
import { middleOf, type Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { isBlind } from './blind.ts';
import type { BlindMap, OpenCells } from './types.ts';

/** Side of a cell, mm, and the share of it that the mask must leave open before its colour is asked. */
const cellMm = 1;
const mostlyOpen = 0.8;
/** Paper is taken from the open cells within this distance, mm, unless another is given; fewer of them than this tell nothing. */
const roundMm = 8;
const leastCells = 12;
/** What differs from that paper by more, in a* and b* and in L* (or so many of its spreads), is not that paper. */
const alikeChroma = 9;
const alikeL = 16;
const spreads = 4;

const root = new Float32Array(3);

/** Colours of what the mask leaves open, cell by cell. */
export function openCells(
  { width, height, rgb, pxPerMm, originMm }: SquaredSheet,
  { filled }: CopperMask,
): OpenCells {
  const side = Math.max(1, Math.round(cellMm * pxPerMm));
  const columns = Math.ceil(width / side);
  const rows = Math.ceil(height / side);
  const lab: OpenCells['lab'] = [
    new Float32Array(columns * rows).fill(NaN),
    new Float32Array(columns * rows),
    new Float32Array(columns * rows),
  ];
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const sum = [0, 0, 0];
      let open = 0;
      let all = 0;
      // Every other pixel each way is enough for a mean.
      for (let y = j * side; y < Math.min(height, (j + 1) * side); y += 2) {
        for (let x = i * side; x < Math.min(width, (i + 1) * side); x += 2, all++) {
          const k = y * width + x;
          if (filled[k]) continue;
          rootOf(rgb, 3 * k, root);
          for (let c = 0; c < 3; c++) sum[c] += root[c];
          open++;
        }
      }
      if (open < mostlyOpen * all) continue;
      const [fx, fy, fz] = sum.map((v) => v / open);
      const at = j * columns + i;
      lab[0][at] = 116 * fy - 16;
      lab[1][at] = 500 * (fx - fy);
      lab[2][at] = 200 * (fy - fz);
    }
  }
  return { columns, rows, cellMm: side / pxPerMm, originMm, lab };
}

/**
 * Whether a place without copper does not look like the paper round it: print, paint, a shadow, a wire that lies over it, or
 * tape that was not known as such (greened, lacquered). An opening there may be one or not: nobody can tell by the mask alone.
 * Where copper reaches into the place itself, most of what is open right round it tells.
 * @param paperMm within which most is paper: more than what may lie over the sheet is wide
 * @returns false where no picture was given, copper lies, or too little paper is round it
 */
export function isStrange({ open }: { open?: OpenCells }, place: Point, paperMm = roundMm): boolean {
  const at = open && cellAt(open, place);
  if (!open || at === undefined) return false;
  const { lab, columns } = open;
  const [i, j] = [at % columns, Math.floor(at / columns)];
  const round = openRound(open, i, j, Math.round(paperMm / open.cellMm));
  if (round.length < leastCells) return false;
  const [L, a, b] = lab.map((plane) => middleOf(Float32Array.from(round, (k) => plane[k])));
  const spread = 1.48 * middleOf(Float32Array.from(round, (k) => Math.abs(lab[0][k] - L)));
  const differs = (k: number): boolean =>
    Math.hypot(lab[1][k] - a, lab[2][k] - b) > alikeChroma ||
    Math.abs(lab[0][k] - L) > Math.max(alikeL, spreads * spread);
  if (!Number.isNaN(lab[0][at])) return differs(at);
  const beside = openRound(open, i, j, 1);
  return beside.length > 1 && beside.filter(differs).length > beside.length / 2;
}

/** Under this L* a cell shows nothing: squaring up leaves black what lies beyond the photograph. */
const nothing = 1;

/** Whether the photograph shows nothing at a place: burnt out, black, or beyond its edge. */
export function isUnseen(traced: { blind?: BlindMap; open?: OpenCells }, at: Point): boolean {
  if (isBlind(traced, at)) return true;
  const k = traced.open ? cellAt(traced.open, at) : undefined;
  return k !== undefined && traced.open!.lab[0][k] < nothing;
}

function cellAt({ columns, rows, cellMm, originMm }: OpenCells, [x, y]: Point): number | undefined {
  const i = Math.floor((x - originMm[0]) / cellMm);
  const j = Math.floor((y - originMm[1]) / cellMm);
  return i < 0 || j < 0 || i >= columns || j >= rows ? undefined : j * columns + i;
}

function openRound({ columns, rows, lab }: OpenCells, i: number, j: number, far: number): number[] {
  const found: number[] = [];
  for (let y = Math.max(0, j - far); y <= Math.min(rows - 1, j + far); y++)
    for (let x = Math.max(0, i - far); x <= Math.min(columns - 1, i + far); x++)
      if (!Number.isNaN(lab[0][y * columns + x])) found.push(y * columns + x);
  return found;
}
