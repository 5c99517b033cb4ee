import type { Cell, CellKind } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { nearPieces } from './nearest.ts';
import type { PadPlace } from './types.ts';

/** Greatest diameters, mm: IEC 60086-2 by the size code (two digits diameter, two digits height in 0.1 mm). */
export const cellDiameterMm: Record<CellKind, number> = {
  CR2032: 20,
  CR2025: 20,
  CR2016: 20,
  CR1620: 16,
  CR1225: 12.5,
  LR44: 11.6,
};

/** Copper that ends this near outside the disc is taken to run on beneath it, mm. */
const rimMm = 0.8;
/** The copper of the upper face is looked for this far round its place, mm. */
const upperReachMm = 3;

export interface CellFaces {
  pads: PadPlace[];
  underCell: number[];
}

/** Which copper the cell's lower face rests on, and which meets its upper face. */
export function cellFaces(traced: Traced, cell: Cell): CellFaces {
  const radius = cellDiameterMm[cell.kind] / 2;
  const lowerName = cell.up === '+' ? 'cell-' : 'cell+';
  const upperName = cell.up === '+' ? 'cell+' : 'cell-';
  const upper = upperPad(traced, upperName, cell.upper_contact);
  const under = nearPieces(traced, cell.at, radius + rimMm);
  const lower = under.find(({ piece, mm }) => mm < radius * 0.95 || piece !== upper?.piece) ?? under[0];
  const pads: PadPlace[] = [
    lower
      ? {
          pad: lowerName,
          at: cell.at,
          piece: lower.piece,
          mm: Math.max(0, lower.mm - radius),
          certainty: 0.95,
        }
      : { pad: lowerName, at: cell.at, piece: 0, mm: Infinity, certainty: 0.95 },
  ];
  if (upper) pads.push(upper);
  return { pads, underCell: under.filter(({ mm }) => mm < radius - 0.3).map(({ piece }) => piece) };
}

function upperPad(traced: Traced, pad: string, at: Point | undefined): PadPlace | undefined {
  if (!at) return undefined;
  const near = nearPieces(traced, at, upperReachMm)[0];
  if (!near) return { pad, at, piece: 0, mm: Infinity, certainty: 0.9 };
  return { pad, at, piece: near.piece, mm: near.mm, certainty: 0.95 };
}
