import type { Flap } from '../card/index.ts';
import { mirrorAbout, type Point, type Segment } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { flapOver } from './flaps.ts';
import { pieceAt } from './nearest.ts';

/** How far a closed flap lies from where its fold line says. */
export interface FoldError {
  /** Across the fold line, mm. */
  shiftMm: number;
  /** The closed flap turned about the fold's middle, degrees clockwise. */
  turnDeg: number;
}

/**
 * Where closing brings a place of the flap: mirrored about the fold, then moved by what the fold is off.
 * A flap turned by t lands d off at a distance r from the fold's middle, d = 2 r sin(t / 2): 1.05 mm at 60 mm for 1 degree.
 */
export function closeMap(flap: { fold: Segment }, error?: FoldError): (p: Point) => Point {
  const mirrored = mirrorAbout(flap.fold);
  if (!error) return mirrored;
  const [a, b] = flap.fold;
  const [mx, my] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const turn = (error.turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return (p) => {
    const [x, y] = mirrored(p);
    const [dx, dy] = [x - mx, y - my];
    return [mx + cos * dx - sin * dy + error.shiftMm * nx, my + sin * dx + cos * dy + error.shiftMm * ny];
  };
}

/** A small square of a flap's copper. */
export interface CopperCell {
  piece: number;
  at: Point;
  areaMm2: number;
}

/** The copper of a flap as cells of this size, mm; pieces that run over the fold count as far as they lie on it. */
export function flapCopper(traced: Traced, flap: Flap, stepMm = 0.2): CopperCell[] {
  const xs = flap.outline.map(([x]) => x);
  const ys = flap.outline.map(([, y]) => y);
  const cells: CopperCell[] = [];
  for (let y = Math.min(...ys) + stepMm / 2; y < Math.max(...ys); y += stepMm) {
    for (let x = Math.min(...xs) + stepMm / 2; x < Math.max(...xs); x += stepMm) {
      const piece = pieceAt(traced, [x, y]);
      if (piece && flapOver(flap, [x, y])) cells.push({ piece, at: [x, y], areaMm2: stepMm * stepMm });
    }
  }
  return cells;
}

/** Copper of a flap over copper of the base when closed. */
export interface Overlap {
  flapPiece: number;
  basePiece: number;
  areaMm2: number;
  /** Middle of the overlap, on the base. */
  at: Point;
}

/** What each piece of a flap lies on when it is closed. @param onBase leaves places out, e.g. those on top of the cell */
export function overlaps(
  traced: Traced,
  cells: readonly CopperCell[],
  close: (p: Point) => Point,
  onBase: (p: Point) => boolean,
): Overlap[] {
  const found = new Map<
    string,
    { flapPiece: number; basePiece: number; n: number; area: number; x: number; y: number }
  >();
  for (const { piece, at, areaMm2 } of cells) {
    const place = close(at);
    const basePiece = pieceAt(traced, place);
    if (!basePiece || !onBase(place)) continue;
    const key = `${piece} ${basePiece}`;
    const held = found.get(key) ?? { flapPiece: piece, basePiece, n: 0, area: 0, x: 0, y: 0 };
    held.n++;
    held.area += areaMm2;
    held.x += place[0];
    held.y += place[1];
    found.set(key, held);
  }
  return [...found.values()].map(({ flapPiece, basePiece, n, area, x, y }) => ({
    flapPiece,
    basePiece,
    areaMm2: area,
    at: [x / n, y / n] as const,
  }));
}

/** How far landing copper lies from a piece of the base, and where it should have landed. */
export interface Miss {
  mm: number;
  /** From the landing copper to its partner. */
  by: Point;
  at: Point;
}

/** The shortest way from what lands to a piece of the base round a place. */
export function missOf(
  traced: Traced,
  landing: readonly Point[],
  basePiece: number,
  around: Point,
  reachMm: number,
): Miss | undefined {
  const stepMm = 0.3;
  let best: Miss | undefined;
  for (let y = around[1] - reachMm; y <= around[1] + reachMm; y += stepMm) {
    for (let x = around[0] - reachMm; x <= around[0] + reachMm; x += stepMm) {
      if (pieceAt(traced, [x, y]) !== basePiece) continue;
      for (const p of landing) {
        const mm = Math.hypot(x - p[0], y - p[1]);
        if (!best || mm < best.mm) best = { mm, by: [x - p[0], y - p[1]], at: [x, y] };
      }
    }
  }
  return best;
}
