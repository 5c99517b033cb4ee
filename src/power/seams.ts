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
  const samples = net.pieces.map((id) => sampleOf(id, traced));
  const far = samples.flatMap((a) =>
    samples.filter((b) => a.id < b.id && !measured.has(`${a.id} ${b.id}`)).map((b) => byLines(a, b)),
  );
  return [...[...known].sort((p, q) => p.mm - q.mm), ...far.sort((p, q) => p.mm - q.mm)];
}

/** Pieces that a patch or a flap joins may lie far apart: where their centre-lines come nearest, on a few points of each. */
function byLines(a: Sample, b: Sample): Near {
  let best: Near | undefined;
  for (const atA of a.points)
    for (const atB of b.points) {
      const mm = Math.hypot(atA[0] - atB[0], atA[1] - atB[1]);
      if (!best || mm < best.mm) best = { a: a.id, b: b.id, atA, atB, mm };
    }
  return best ?? { a: a.id, b: b.id, atA: [0, 0], atB: [0, 0], mm: Infinity };
}

const mostPoints = 40;

interface Sample {
  id: number;
  points: Point[];
}

function sampleOf(id: number, traced: Traced): Sample {
  const piece = traced.pieces.find((candidate) => candidate.id === id);
  if (!piece) return { id, points: [] };
  const all = piece.lines.flatMap(({ path }) => path);
  const { x0, y0, x1, y1 } = piece.box;
  if (all.length === 0) return { id, points: [[(x0 + x1) / 2, (y0 + y1) / 2]] };
  const every = Math.ceil(all.length / mostPoints);
  const ends = piece.lines.flatMap(({ path }) => [path[0] as Point, path.at(-1) as Point]);
  return { id, points: [...ends, ...all.filter((_, i) => i % every === 0)] };
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
