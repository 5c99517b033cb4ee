import type { Point, Quad } from '../../geometry/index.ts';
import { support } from './lines.ts';
import type { Line } from './lines.ts';
import { poseMisfit } from './pose.ts';
import { roughQuads, signedArea } from './roughQuads.ts';
import type { RoughQuad } from './roughQuads.ts';

/** Four lines that could be the base's sides. Work px. */
export interface Candidate {
  /** In the order (0,0) (w,0) (w,h) (0,h) of the base but for the turn, clockwise as seen. */
  corners: Quad;
  /** Edge evidence along the sides 0-1, 1-2, 2-3, 3-0, each 0..1. */
  support: readonly [number, number, number, number];
  /** The lines of those sides. */
  lines: readonly [Line, Line, Line, Line];
  /** Share of the picture that it covers. */
  areaShare: number;
  misfit: number;
  focal: number;
  coarse: number;
}

export interface Bounds {
  width: number;
  height: number;
}

const mostMisfit = 0.11;

/**
 * The figures of four of the given lines that could be the base, best first: convex, large enough, with some evidence
 * on each side, and such as the image of the base can be. They are judged in the order of what they could score at
 * best, so that most need not be judged at all.
 * @param base size in mm; undefined admits every shape
 * @param leastShare of the picture that it must cover
 */
export function candidateQuads(
  lines: Line[],
  picture: Bounds,
  base: { width: number; height: number } | undefined,
  most: number,
  leastShare = 0.03,
): Candidate[] {
  const kept: Candidate[] = [];
  for (const rough of roughQuads(lines, picture, leastShare)) {
    if (kept.length === most && rough.atBest <= kept[most - 1].coarse) break;
    const judged = judge(rough, lines, picture, base);
    if (judged) insert(kept, judged, most);
  }
  return kept;
}

function insert(kept: Candidate[], one: Candidate, most: number): void {
  let at = kept.length;
  while (at > 0 && kept[at - 1].coarse < one.coarse) at--;
  kept.splice(at, 0, one);
  if (kept.length > most) kept.pop();
}

type Made = Pick<Candidate, 'corners' | 'support' | 'lines'>;

function judge(
  rough: RoughQuad,
  all: Line[],
  picture: Bounds,
  base: { width: number; height: number } | undefined,
): Candidate | undefined {
  const { corners, support } = rough;
  const lines = rough.sides.map((side) => all[side]) as unknown as Candidate['lines'];
  const right = signedArea(corners) > 0 ? { corners, support, lines } : reversed({ corners, support, lines });
  const pose = base && poseOf(right.corners, base, picture);
  if (pose && pose.misfit > mostMisfit) return undefined;
  const past = right.lines.reduce((sum, line, side) => sum + supportPast(right.corners, line, side), 0) / 4;
  return {
    ...(pose?.turned ? nextCorner(right) : right),
    areaShare: rough.share,
    misfit: pose?.misfit ?? 0,
    focal: pose?.focal ?? 0.77,
    coarse: rough.atBest - 0.4 * past - 1.5 * (pose?.misfit ?? 0),
  };
}

/** How well the figure can be the base, begun at its first corner or at its second, whichever fits. */
function poseOf([p, q, r, s]: Quad, base: { width: number; height: number }, picture: Bounds) {
  const long = Math.max(picture.width, picture.height);
  const centre: Point = [picture.width / 2, picture.height / 2];
  const straight = poseMisfit([p, q, r, s], base, centre, long);
  const turned = poseMisfit([q, r, s, p], base, centre, long);
  return straight.misfit <= turned.misfit ? { ...straight, turned: false } : { ...turned, turned: true };
}

/** The same figure begun at the next corner. */
function nextCorner({ corners: [a, b, c, d], support: [s, t, u, v], lines: [k, l, m, n] }: Made): Made {
  return { corners: [b, c, d, a], support: [t, u, v, s], lines: [l, m, n, k] };
}

/** The other way round, still beginning at the first corner: sides 0-1 1-2 2-3 3-0 become 0-3 3-2 2-1 1-0. */
function reversed({ corners: [a, b, c, d], support: [s, t, u, v], lines: [k, l, m, n] }: Made): Made {
  return { corners: [a, d, c, b], support: [v, u, t, s], lines: [n, m, l, k] };
}

/** Edge evidence on the continuation of a side past both its ends: the edge of a sheet stops at its corners. */
export function supportPast(corners: Quad, line: Line, side: number): number {
  const a = corners[side];
  const b = corners[(side + 1) % 4];
  const past = (p: Point, q: Point, t: number): Point => [q[0] + (q[0] - p[0]) * t, q[1] + (q[1] - p[1]) * t];
  return (
    (support(line, past(a, b, 0.02), past(a, b, 0.2)) + support(line, past(b, a, 0.02), past(b, a, 0.2))) / 2
  );
}
