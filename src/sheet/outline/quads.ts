import type { Point, Quad } from '../../geometry/index.ts';
import { meet, support } from './lines.ts';
import type { Line } from './lines.ts';
import { poseMisfit } from './pose.ts';

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

const leastSupport = 0.22;
const mostMisfit = 0.11;

/**
 * Every convex four-sided figure of the given lines that is large enough, has some evidence on each side and can be
 * the image of the base, best first.
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
  const cross = crossings(lines, picture);
  const n = lines.length;
  const found: Candidate[] = [];
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      if (!opposite(lines[i], lines[j])) continue;
      const ends = endLines(lines, cross, i, j);
      for (let a = 0; a < ends.length; a++) {
        for (let b = a + 1; b < ends.length; b++) {
          const made = makeQuad(
            lines,
            cross,
            [i, ends[a].line, j, ends[b].line],
            ends[a].support,
            ends[b].support,
          );
          if (made) judge(made, picture, base, leastShare, found);
        }
      }
    }
  }
  return found.sort((p, q) => q.coarse - p.coarse).slice(0, most);
}

interface Crossing {
  at: Point;
  /** Index into line.sum of each of the two lines. */
  on: [number, number];
}

function crossings(lines: Line[], picture: Bounds): (Crossing | undefined)[][] {
  const slack = 0.06 * Math.max(picture.width, picture.height);
  return lines.map((a) =>
    lines.map((b) => {
      const at = a === b ? undefined : meet(a, b);
      if (!at) return undefined;
      const out =
        at[0] < -slack || at[1] < -slack || at[0] > picture.width + slack || at[1] > picture.height + slack;
      return out ? undefined : { at, on: [indexOn(a, at), indexOn(b, at)] };
    }),
  );
}

function indexOn(l: Line, [x, y]: Point): number {
  return Math.min(Math.max(Math.round(-l.ny * x + l.nx * y - l.t0), 0), l.sum.length - 1);
}

/** Sides opposite each other differ by under 45 degrees even at a steep tilt. */
const opposite = (a: Line, b: Line) => Math.abs(a.nx * b.nx + a.ny * b.ny) > 0.72;

function supportBetween(l: Line, a: number, b: number): number {
  const length = Math.abs(b - a);
  return length < 40 ? 0 : Math.abs(l.sum[b] - l.sum[a]) / length;
}

/** Lines that could join i to j, with their evidence between the two. */
function endLines(lines: Line[], cross: (Crossing | undefined)[][], i: number, j: number) {
  const out: { line: number; support: number }[] = [];
  for (let k = 0; k < lines.length; k++) {
    const a = cross[k][i];
    const b = cross[k][j];
    if (!a || !b || k === i || k === j) continue;
    const s = supportBetween(lines[k], a.on[0], b.on[0]);
    if (s > leastSupport) out.push({ line: k, support: s });
  }
  return out;
}

function makeQuad(
  lines: Line[],
  cross: (Crossing | undefined)[][],
  [i, k, j, l]: number[],
  sk: number,
  sl: number,
) {
  const a = cross[i][k];
  const b = cross[j][k];
  const c = cross[j][l];
  const d = cross[i][l];
  if (!a || !b || !c || !d) return undefined;
  const si = supportBetween(lines[i], a.on[0], d.on[0]);
  if (si < leastSupport) return undefined;
  const sj = supportBetween(lines[j], b.on[0], c.on[0]);
  if (sj < leastSupport) return undefined;
  return {
    corners: [d.at, a.at, b.at, c.at] as const,
    support: [si, sk, sj, sl] as const,
    lines: [lines[i], lines[k], lines[j], lines[l]] as const,
  };
}

type Made = Pick<Candidate, 'corners' | 'support' | 'lines'>;

function judge(
  made: Made,
  picture: Bounds,
  base: { width: number; height: number } | undefined,
  leastShare: number,
  found: Candidate[],
): void {
  const area = signedArea(made.corners);
  const share = Math.abs(area) / (picture.width * picture.height);
  if (share < leastShare || !convex(made.corners)) return;
  const right = area > 0 ? made : reversed(made);
  const { corners } = right;
  const least = Math.min(...right.support);
  const past = right.lines.reduce((sum, line, side) => sum + supportPast(corners, line, side), 0) / 4;
  const mean = right.support.reduce((a, b) => a + b) / 4;
  const coarse = 0.6 * mean + 0.4 * least + 0.25 * Math.sqrt(share) - 0.4 * past;
  if (!base) {
    found.push({ ...right, areaShare: share, misfit: 0, focal: 0.77, coarse });
    return;
  }
  const long = Math.max(picture.width, picture.height);
  const centre: Point = [picture.width / 2, picture.height / 2];
  const straight = poseMisfit(corners, base, centre, long);
  const [p, q, r, s] = corners;
  const turned = poseMisfit([q, r, s, p], base, centre, long);
  const lies = straight.misfit <= turned.misfit;
  const pose = lies ? straight : turned;
  if (pose.misfit > mostMisfit) return;
  found.push({
    ...(lies ? right : nextCorner(right)),
    areaShare: share,
    misfit: pose.misfit,
    focal: pose.focal,
    coarse: coarse - 1.5 * pose.misfit,
  });
}

/** The same figure begun at the next corner. */
function nextCorner({ corners: [a, b, c, d], support: [s, t, u, v], lines: [k, l, m, n] }: Made): Made {
  return { corners: [b, c, d, a], support: [t, u, v, s], lines: [l, m, n, k] };
}

/** Positive when the corners run clockwise as seen (y down). */
export function signedArea(q: Quad): number {
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    const a = q[i];
    const b = q[(i + 1) % 4];
    sum += a[0] * b[1] - a[1] * b[0];
  }
  return sum / 2;
}

export function convex(q: Quad): boolean {
  let sign = 0;
  for (let i = 0; i < 4; i++) {
    const a = q[i];
    const b = q[(i + 1) % 4];
    const c = q[(i + 2) % 4];
    const turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]) * Math.hypot(c[0] - b[0], c[1] - b[1]);
    if (Math.abs(turn) < 0.25 * size) return false;
    if (sign === 0) sign = Math.sign(turn);
    else if (Math.sign(turn) !== sign) return false;
  }
  return true;
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
