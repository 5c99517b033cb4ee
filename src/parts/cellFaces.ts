import type { Card, Cell, CellKind } from '../card/index.ts';
import { mirrorAbout, type Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { flapOver } from './flaps.ts';
import { nearPieces } from './nearest.ts';
import type { NestPiece, PadPlace } from './types.ts';

/** Greatest diameters, mm: IEC 60086-2 by the size code (two digits diameter, two digits height in 0.1 mm). */
export const cellDiameterMm: Record<CellKind, number> = {
  CR2032: 20,
  CR2025: 20,
  CR2016: 20,
  CR1620: 16,
  CR1225: 12.5,
  LR44: 11.6,
};

/** Copper that ends this near outside the disc and points at it is taken to run on beneath it, mm. */
const rimMm = 1.5;
/** Copper that only grazes the disc by less is beside it, mm. */
const grazeMm = 0.4;
/** The copper of the upper face is looked for this far round its place, mm. */
const upperReachMm = 3;

export interface CellFaces {
  pads: PadPlace[];
  nest: NestPiece[];
}

/** Which copper the cell's lower face rests on, and which meets its upper face. */
export function cellFaces(traced: Traced, card: Card, cell: Cell): CellFaces {
  const radius = cellDiameterMm[cell.kind] / 2;
  const upper = upperPad(traced, card, cell, radius);
  const nest = nestPieces(traced, cell.at, radius).filter(
    ({ at }) => !card.flaps.some((flap) => flapOver(flap, at)),
  );
  const lower = nest.find(({ piece }) => piece !== upper?.piece) ?? nest[0];
  const pad: PadPlace = lower
    ? { pad: lowerName(cell), at: lower.at, piece: lower.piece, mm: 0, certainty: 0.95 }
    : { pad: lowerName(cell), at: cell.at, piece: 0, mm: Infinity, certainty: 0.95 };
  return { pads: upper ? [pad, upper] : [pad], nest };
}

function lowerName({ up }: Cell): string {
  return up === '+' ? 'cell-' : 'cell+';
}

/** Copper under the disc, most first, then strips that end at its rim and point inward. */
function nestPieces(traced: Traced, at: Point, radius: number): NestPiece[] {
  const inside = new Map<number, { n: number; x: number; y: number }>();
  const { width, height, pxPerMm, originMm, labels } = traced;
  const [cx, cy] = [(at[0] - originMm[0]) * pxPerMm, (at[1] - originMm[1]) * pxPerMm];
  const r = (radius - grazeMm) * pxPerMm;
  // Every other pixel each way is enough to weigh copper under a disc.
  for (let y = Math.max(0, Math.ceil(cy - r)); y < Math.min(height, cy + r); y += 2) {
    const half = Math.sqrt(Math.max(0, r * r - (y + 0.5 - cy) ** 2));
    const x1 = Math.min(width - 1, Math.floor(cx + half));
    for (let x = Math.max(0, Math.ceil(cx - half)); x <= x1; x += 2) {
      const piece = labels[y * width + x];
      if (piece === 0) continue;
      const held = inside.get(piece) ?? { n: 0, x: 0, y: 0 };
      inside.set(piece, { n: held.n + 1, x: held.x + x, y: held.y + y });
    }
  }
  const covered = [...inside]
    .filter(([piece]) => leadsOut(traced, piece, at, radius))
    .map(([piece, { n, x, y }]): NestPiece => ({
      piece,
      at: [originMm[0] + (x / n + 0.5) / pxPerMm, originMm[1] + (y / n + 0.5) / pxPerMm],
      areaMm2: (4 * n) / pxPerMm ** 2,
    }));
  covered.sort((a, b) => b.areaMm2 - a.areaMm2);
  const ends = traced.pieces
    .filter(({ id }) => !inside.has(id))
    .flatMap((piece) => piece.ends)
    .filter((end) => pointsAt(end.at, end.out, at, radius))
    .map((end): NestPiece => ({ piece: end.piece, at: end.at, areaMm2: 0 }));
  return [...covered, ...ends];
}

/** How far beyond its disc a cell's own can is seen, its tap's error in it, mm. */
const canMm = 1.5;

/** Whether a piece reaches out from the cell: what lies wholly on it is the can's own shine, taken for copper. */
function leadsOut({ pieces }: Traced, piece: number, at: Point, radius: number): boolean {
  return pieces[piece - 1].outline.outer.some((p) => Math.hypot(p[0] - at[0], p[1] - at[1]) > radius + canMm);
}

function pointsAt(end: Point, out: Point, at: Point, radius: number): boolean {
  const [dx, dy] = [at[0] - end[0], at[1] - end[1]];
  const d = Math.hypot(dx, dy);
  return d <= radius + rimMm && (dx * out[0] + dy * out[1]) / d > 0.5;
}

/** The strip that meets the upper face: at its given place, or on the flap that closes over the cell. */
function upperPad(traced: Traced, card: Card, cell: Cell, radius: number): PadPlace | undefined {
  const pad = `cell${cell.up}`;
  const flap = card.flaps.find(({ use }) => use === 'cell');
  const at = cell.upper_contact ?? (flap && mirrorAbout(flap.fold)(cell.at));
  if (!at) return undefined;
  const reach = cell.upper_contact ? upperReachMm : radius - 1;
  const near = nearPieces(traced, at, reach)[0];
  if (!near) return { pad, at, piece: 0, mm: Infinity, certainty: 0.9 };
  return { pad, at: near.at, piece: near.piece, mm: near.mm, certainty: 0.95 };
}
