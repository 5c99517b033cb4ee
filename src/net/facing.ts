import type { Point } from '../geometry/index.ts';
import { pieceAt } from '../parts/index.ts';
import type { CentreLine, StripEnd, Traced } from '../trace/index.ts';
import { between, distance } from './distance.ts';

/** Ends farther apart than this are not taken as one broken strip, mm. */
const mostMm = 6;

/** Two strip ends that look like one strip broken between them. */
export interface Facing {
  a: StripEnd;
  b: StripEnd;
  at: Point;
  mm: number;
  /** 0..1: how well they are in line, as wide as each other, and near. */
  match: number;
}

/** Pairs of ends of different pieces that face each other, best first, each end in one pair. */
export function facingEnds(traced: Traced): Facing[] {
  const ends = traced.pieces.flatMap((piece) => piece.ends.map((end) => alongAxis(traced, piece.lines, end)));
  const found: Facing[] = [];
  ends.forEach((a, k) => {
    for (const b of ends.slice(k + 1)) {
      const facing = a.piece === b.piece ? undefined : pair(a, b);
      if (facing) found.push(facing);
    }
  });
  const used = new Set<StripEnd>();
  return found
    .sort((p, q) => q.match - p.match)
    .filter(({ a, b }) => {
      if (used.has(a) || used.has(b)) return false;
      used.add(a).add(b);
      return true;
    });
}

/**
 * The end where the strip's own axis leaves the copper. The last stretch of a centre-line leans to a corner where the end
 * is cut aslant, so the axis is taken from before it.
 */
function alongAxis(traced: Traced, lines: readonly CentreLine[], end: StripEnd): StripEnd {
  const line = lines.find(({ path }) => same(path[0], end.at) || same(path[path.length - 1], end.at));
  if (!line) return end;
  const path = same(line.path[0], end.at) ? [...line.path].reverse() : line.path;
  const back = path.length - 1 - Math.ceil((1.2 * end.widthMm) / stepMm);
  const far = back - Math.ceil((2 * end.widthMm) / stepMm);
  if (far < 0) return end;
  const length = distance(path[far], path[back]) || 1;
  const out: Point = [(path[back][0] - path[far][0]) / length, (path[back][1] - path[far][1]) / length];
  for (let mm = 0; mm < 3 * end.widthMm; mm += 0.1) {
    const p: Point = [path[back][0] + mm * out[0], path[back][1] + mm * out[1]];
    if (pieceAt(traced, p) !== end.piece) return { ...end, at: p, out };
  }
  return end;
}

/** Steps of a centre-line, mm. */
const stepMm = 0.5;

function same(a: Point, b: Point): boolean {
  return distance(a, b) < 0.05;
}

function pair(a: StripEnd, b: StripEnd): Facing | undefined {
  const mm = distance(a.at, b.at);
  if (mm > mostMm) return undefined;
  const opposed = -(a.out[0] * b.out[0] + a.out[1] * b.out[1]);
  if (opposed < 0.7) return undefined;
  const wide = Math.max(a.widthMm, b.widthMm, 0.1);
  const off = Math.max(aside(a, b.at), aside(b, a.at)) / wide;
  if (off > 0.6 || ahead(a, b.at) < -0.5 || ahead(b, a.at) < -0.5) return undefined;
  const alike = Math.min(a.widthMm, b.widthMm) / wide;
  if (alike < 0.45) return undefined;
  const near = 1 - Math.max(0, mm - 2) / 8;
  const match = near * (1 - 0.4 * off) * Math.min(1, 0.55 + 0.45 * opposed) * Math.min(1, 0.6 + 0.5 * alike);
  return { a, b, at: between(a.at, b.at), mm, match };
}

function ahead({ at, out }: StripEnd, p: Point): number {
  return (p[0] - at[0]) * out[0] + (p[1] - at[1]) * out[1];
}

function aside({ at, out }: StripEnd, p: Point): number {
  return Math.abs((p[1] - at[1]) * out[0] - (p[0] - at[0]) * out[1]);
}
