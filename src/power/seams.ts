import type { Card, Join } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Net } from '../net/index.ts';
import type { Traced } from '../trace/index.ts';
import { sets } from './graph.ts';
import { jointRanges } from './joints.ts';

/** Two pieces of one net meeting: where on each, and the resistance there. */
export interface Seam {
  id: string;
  a: number;
  b: number;
  atA: Point;
  atB: Point;
  ohm: number;
}

/** A seam seen across one piece. */
export interface SeamAcross {
  id: string;
  piece: number;
  at: Point;
  ohm: number;
}

/** A maker's own reading counts for a seam this near it, mm. */
const readingReachMm = 4;

/** Seams that hold the pieces of a net together: between neighbours, the nearest first, as few as join them all. */
export function seamsOf(net: Net, traced: Traced, card: Card): Seam[] {
  if (net.pieces.length < 2) return [];
  const index = new Map(net.pieces.map((piece, i) => [piece, i]));
  const joined = sets(net.pieces.length);
  const seams: Seam[] = [];
  for (const { a, b, atA, atB } of nearestFirst(net, traced)) {
    const [i, j] = [index.get(a) as number, index.get(b) as number];
    if (joined.top(i) === joined.top(j)) continue;
    joined.join(i, j);
    const at: Point = [(atA[0] + atB[0]) / 2, (atA[1] + atB[1]) / 2];
    seams.push({ id: seamId(at), a, b, atA, atB, ohm: readingAt(at, card.joins) ?? jointRanges.seam.usual });
  }
  return seams;
}

/** Seams that the trace saw across a single piece, more likely than not. */
export function seamsAcross(traced: Traced, card: Card): SeamAcross[] {
  return traced.crossings
    .filter(({ seam }) => seam >= 0.5)
    .map(({ piece, at }) => ({
      id: seamId(at),
      piece,
      at,
      ohm: readingAt(at, card.joins) ?? jointRanges.seam.usual,
    }));
}

interface Near {
  a: number;
  b: number;
  atA: Point;
  atB: Point;
  mm: number;
}

function nearestFirst(net: Net, traced: Traced): Near[] {
  const inside = new Set(net.pieces);
  const known = traced.clearances.filter(({ a, b }) => a !== b && inside.has(a) && inside.has(b));
  const measured = new Set(known.map(({ a, b }) => `${Math.min(a, b)} ${Math.max(a, b)}`));
  const far: Near[] = [];
  for (const a of net.pieces)
    for (const b of net.pieces) if (a < b && !measured.has(`${a} ${b}`)) far.push(byCentre(a, b, traced));
  return [...[...known].sort((p, q) => p.mm - q.mm), ...far.sort((p, q) => p.mm - q.mm)];
}

/** Pieces that a patch or a flap joins may lie far apart; their middles tell which are neighbours well enough. */
function byCentre(a: number, b: number, traced: Traced): Near {
  const [atA, atB] = [middle(a, traced), middle(b, traced)];
  return { a, b, atA, atB, mm: Math.hypot(atA[0] - atB[0], atA[1] - atB[1]) };
}

function middle(id: number, traced: Traced): Point {
  const piece = traced.pieces.find((candidate) => candidate.id === id);
  if (!piece) return [0, 0];
  const { x0, y0, x1, y1 } = piece.box;
  return [(x0 + x1) / 2, (y0 + y1) / 2];
}

function readingAt(at: Point, joins: readonly Join[]): number | undefined {
  const near = joins.filter(
    (join) =>
      join.conducts &&
      join.ohm !== undefined &&
      Math.hypot(join.at[0] - at[0], join.at[1] - at[1]) < readingReachMm,
  );
  return near[0]?.ohm;
}

function seamId([x, y]: Point): string {
  return `seam@${x.toFixed(1)},${y.toFixed(1)}`;
}
