import type { Point, Segment } from '../../geometry/index.ts';

/** A turn and a shift in the plane: p goes to (c x - s y + dx, s x + c y + dy), mm. */
export interface Rigid {
  c: number;
  s: number;
  dx: number;
  dy: number;
}

export const still: Rigid = { c: 1, s: 0, dx: 0, dy: 0 };

export function apply({ c, s, dx, dy }: Rigid, [x, y]: Point): Point {
  return [c * x - s * y + dx, s * x + c * y + dy];
}

export function inverse({ c, s, dx, dy }: Rigid): Rigid {
  return { c, s: -s, dx: -(c * dx + s * dy), dy: s * dx - c * dy };
}

/** The motion that does `first`, then `then`. */
export function after(then: Rigid, first: Rigid): Rigid {
  const [dx, dy] = apply(then, [first.dx, first.dy]);
  return {
    c: then.c * first.c - then.s * first.s,
    s: then.s * first.c + then.c * first.s,
    dx,
    dy,
  };
}

/** Half a turn about a place. */
export function halfTurn([x, y]: Point): Rigid {
  return { c: -1, s: 0, dx: 2 * x, dy: 2 * y };
}

/** The motion that lays one segment along another, middle on middle, its ends in their order. */
export function ontoSegment([a, b]: Segment, [p, q]: Segment): Rigid {
  const turn = Math.atan2(q[1] - p[1], q[0] - p[0]) - Math.atan2(b[1] - a[1], b[0] - a[0]);
  return around(Math.cos(turn), Math.sin(turn), middle(a, b), middle(p, q));
}

/**
 * The motion that brings pairs of places together best, least squares.
 * @source Kabsch 1976, in the plane: the turn is the angle of the summed cross and dot products about the centroids
 */
export function fitPairs(pairs: readonly (readonly [from: Point, to: Point])[]): Rigid {
  const mean = (of: 0 | 1): Point => [
    pairs.reduce((sum, pair) => sum + pair[of][0], 0) / pairs.length,
    pairs.reduce((sum, pair) => sum + pair[of][1], 0) / pairs.length,
  ];
  const [m, n] = [mean(0), mean(1)];
  let dot = 0;
  let cross = 0;
  for (const [from, to] of pairs) {
    const [x, y, u, v] = [from[0] - m[0], from[1] - m[1], to[0] - n[0], to[1] - n[1]];
    dot += x * u + y * v;
    cross += x * v - y * u;
  }
  const length = Math.hypot(dot, cross) || 1;
  return around(dot / length, cross / length, m, n);
}

function around(c: number, s: number, from: Point, to: Point): Rigid {
  return { c, s, dx: to[0] - (c * from[0] - s * from[1]), dy: to[1] - (s * from[0] + c * from[1]) };
}

function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
