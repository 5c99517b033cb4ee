import type { CopperMask } from '../../copper/index.ts';
import type { Point } from '../../geometry/index.ts';
import { after, apply, fitPairs, halfTurn, type Rigid } from './rigid.ts';

/** So many places of a sheet's copper are matched. */
const places = 1500;
/** Farther apart than this two edges are not the same, mm. */
const reachMm = 3;
/** The share of places that lie nearer than what is told as residual: copper that one of the sheets lacks is allowed for. */
const nearShare = 0.8;

/** How well the copper of one sheet lies on another's. */
export interface Match {
  toBase: Rigid;
  residualMm: number;
  /** Where it is worst among those counted. */
  at: Point;
}

/**
 * Lays a sheet's copper on the base's: places along its edges against the nearest edges there, moved as one until they
 * rest (iterated closest points).
 * @source Besl and McKay 1992, the pairs farther apart than 3 mm left out
 * @param counts leaves places of the base out: patches, what the other sheet does not show
 * @returns undefined where the sheet has no copper to match
 */
export function matchCopper(
  own: CopperMask,
  base: CopperMask,
  start: Rigid,
  counts: (onBase: Point) => boolean,
): { before: Match; best: Match } | undefined {
  const edge = edgePlaces(own).filter((p) => counts(apply(start, p)));
  const some = edge.filter((_, k) => k % Math.max(1, Math.floor(edge.length / places)) === 0);
  if (some.length < 20) return undefined;
  const near = nearestOf(edgePlaces(base));
  const before = measure(some, near, start);
  let best = before;
  for (const from of [start, after(halfTurn(middleOf(base)), start)]) {
    const moved = rested(some, near, from);
    const match = measure(some, near, moved);
    if (match.residualMm < best.residualMm) best = match;
  }
  return { before, best };
}

function rested(some: readonly Point[], near: Nearest, from: Rigid): Rigid {
  let motion = from;
  for (let n = 0; n < 12; n++) {
    const pairs = some.flatMap((p) => {
      const moved = apply(motion, p);
      const to = near(moved);
      return to ? [[moved, to] as const] : [];
    });
    if (pairs.length < 20) return motion;
    const step = fitPairs(pairs);
    motion = after(step, motion);
    if (Math.hypot(step.dx, step.dy) < 0.005 && Math.abs(step.s) < 1e-5) return motion;
  }
  return motion;
}

function measure(some: readonly Point[], near: Nearest, toBase: Rigid): Match {
  const off = some.map((p) => {
    const at = apply(toBase, p);
    const to = near(at);
    return { at, mm: to ? Math.hypot(to[0] - at[0], to[1] - at[1]) : reachMm };
  });
  off.sort((a, b) => a.mm - b.mm);
  const { at, mm } = off[Math.floor(nearShare * (off.length - 1))];
  return { toBase, residualMm: mm, at };
}

/** Middles of copper pixels that touch paper, mm. */
function edgePlaces({ width, height, pxPerMm, originMm, filled }: CopperMask): Point[] {
  const found: Point[] = [];
  for (let j = 1; j < height - 1; j++) {
    for (let i = 1; i < width - 1; i++) {
      const k = j * width + i;
      if (!filled[k] || (filled[k - 1] && filled[k + 1] && filled[k - width] && filled[k + width])) continue;
      found.push([originMm[0] + (i + 0.5) / pxPerMm, originMm[1] + (j + 0.5) / pxPerMm]);
    }
  }
  return found;
}

type Nearest = (p: Point) => Point | undefined;

/** The nearest of many places within reach, looked up in squares of a millimetre. */
function nearestOf(all: readonly Point[]): Nearest {
  const squares = new Map<number, Point[]>();
  const key = (i: number, j: number) => (j + 5000) * 20000 + i + 5000;
  for (const p of all) {
    const k = key(Math.floor(p[0]), Math.floor(p[1]));
    const held = squares.get(k);
    if (held) held.push(p);
    else squares.set(k, [p]);
  }
  return ([x, y]) => {
    let best: Point | undefined;
    let least = reachMm ** 2;
    const [i, j] = [Math.floor(x), Math.floor(y)];
    for (let ring = 0; ring <= reachMm; ring++) {
      if (best && least <= (ring - 1) ** 2) break;
      for (let v = j - ring; v <= j + ring; v++) {
        const step = Math.abs(v - j) === ring ? 1 : 2 * ring || 1;
        for (let u = i - ring; u <= i + ring; u += step) {
          for (const p of squares.get(key(u, v)) ?? []) {
            const d2 = (p[0] - x) ** 2 + (p[1] - y) ** 2;
            if (d2 < least) [best, least] = [p, d2];
          }
        }
      }
    }
    return best;
  };
}

function middleOf({ baseMm }: CopperMask): Point {
  return [baseMm.width / 2, baseMm.height / 2];
}
