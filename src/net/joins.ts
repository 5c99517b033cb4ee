import type { Card, Patch } from '../card/index.ts';
import { insideRing, type Point } from '../geometry/index.ts';
import { nearPieces, pieceAt } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';

/** Two pieces that conduct though the mask does not join them, and why. */
export interface PieceJoin {
  a: number;
  b: number;
  /** A place on each. */
  atA: Point;
  atB: Point;
  why: 'by hand' | 'beneath patch' | 'over patch' | 'beneath cell';
}

/** A finger's breadth round a tap at a join, mm. */
const tapMm = 3;

/** Joins that the picture does not show: told by the maker, under or over a patch. */
export function pieceJoins(traced: Traced, card: Card): PieceJoin[] {
  return [
    ...card.joins.filter(({ conducts }) => conducts).flatMap(({ at }) => joinAt(traced, at)),
    ...card.patches.flatMap((patch) => patchJoins(traced, patch)),
  ];
}

function joinAt(traced: Traced, at: Point): PieceJoin[] {
  const [a, b] = nearPieces(traced, at, tapMm);
  return a && b ? [{ a: a.piece, b: b.piece, atA: a.at, atB: b.at, why: 'by hand' }] : [];
}

/** A strip under a patch, or over it, joins the copper on which its path lies; under a patch only outside its outline. */
function patchJoins(traced: Traced, patch: Patch): PieceJoin[] {
  const beneath = patch.beneath.flatMap(({ path }) =>
    alongPath(traced, path, (p) => !insideRing(p, patch.outline), 'beneath patch'),
  );
  const over = patch.strips.flatMap(({ path }) => alongPath(traced, path, () => true, 'over patch'));
  return [...beneath, ...over];
}

function alongPath(
  traced: Traced,
  path: readonly Point[],
  counts: (p: Point) => boolean,
  why: PieceJoin['why'],
): PieceJoin[] {
  const joins: PieceJoin[] = [];
  let last = 0;
  let lastAt = path[0];
  for (const p of samples(path, 0.5)) {
    const piece = counts(p) ? pieceAt(traced, p) : 0;
    if (piece === 0) continue;
    if (last !== 0 && last !== piece) joins.push({ a: last, b: piece, atA: lastAt, atB: p, why });
    last = piece;
    lastAt = p;
  }
  return joins;
}

/** Points along a path, no farther apart than a step, both ends included. */
export function samples(path: readonly Point[], stepMm: number): Point[] {
  const out: Point[] = [path[0]];
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const n = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / stepMm));
    for (let i = 1; i <= n; i++) out.push([a[0] + ((b[0] - a[0]) * i) / n, a[1] + ((b[1] - a[1]) * i) / n]);
  }
  return out;
}
