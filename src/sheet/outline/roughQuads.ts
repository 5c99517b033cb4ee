import type { Point, Quad } from '../../geometry/index.ts';
import { meet } from './lines.ts';
import type { Line } from './lines.ts';
import type { Bounds } from './quads.ts';

/** Four lines that close a convex figure, before anything costly is asked of it. Work px. */
export interface RoughQuad {
  corners: Quad;
  /** Indices of the lines of the sides 0-1, 1-2, 2-3, 3-0, and the edge evidence along each, 0..1. */
  sides: readonly [number, number, number, number];
  support: readonly [number, number, number, number];
  /** Share of the picture that it covers. */
  share: number;
  /** Its score if nothing spoke against it. */
  atBest: number;
}

const leastSupport = 0.22;
/** A side shorter than this shows too little, work px. */
const leastSide = 40;
/** Sine of the flattest corner. */
const leastTurn = 0.25;
/** Lines beyond this many, the weakest, are left out: four indices fit into 32 bits. */
const mostLines = 256;

/**
 * Every convex figure of four of the lines that is large enough and has some evidence on each side, best first.
 * There can be a hundred thousand, so they are found as plain numbers and made one by one as they are asked for.
 */
export function* roughQuads(all: Line[], picture: Bounds, leastShare: number): Generator<RoughQuad> {
  const lines = all.slice(0, mostLines);
  const cross = crossingsOf(lines, picture);
  const area = picture.width * picture.height;
  const keys = Float64Array.from(rankedKeys(lines, cross, leastShare * area, area)).sort();
  for (let n = keys.length - 1; n >= 0; n--) yield quadOf(keys[n] % 2 ** 32, lines, cross, area);
}

/** Where each line meets each other, row-major by the first; `x` is NaN where they do not meet in the picture. */
interface Crossings {
  count: number;
  x: Float64Array;
  y: Float64Array;
  /** Index of the place into the first line's `sum`. */
  on: Int32Array;
}

function crossingsOf(lines: Line[], picture: Bounds): Crossings {
  const count = lines.length;
  const x = new Float64Array(count * count).fill(NaN);
  const y = new Float64Array(count * count);
  const on = new Int32Array(count * count);
  const slack = 0.06 * Math.max(picture.width, picture.height);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      const at = i === j ? undefined : meet(lines[i], lines[j]);
      if (!at || at[0] < -slack || at[1] < -slack) continue;
      if (at[0] > picture.width + slack || at[1] > picture.height + slack) continue;
      x[i * count + j] = at[0];
      y[i * count + j] = at[1];
      on[i * count + j] = indexOn(lines[i], at);
    }
  }
  return { count, x, y, on };
}

function indexOn(l: Line, [x, y]: Point): number {
  return Math.min(Math.max(Math.round(-l.ny * x + l.nx * y - l.t0), 0), l.sum.length - 1);
}

/** Sides opposite each other differ by under 45 degrees even at a steep tilt. */
function opposite(a: Line, b: Line): boolean {
  return Math.abs(a.nx * b.nx + a.ny * b.ny) > 0.72;
}

/** Evidence on line i between where lines a and b cross it, 0..1. */
function supportBetween(lines: Line[], { count, on }: Crossings, i: number, a: number, b: number): number {
  const [from, to] = [on[i * count + a], on[i * count + b]];
  const length = Math.abs(to - from);
  return length < leastSide ? 0 : Math.abs(lines[i].sum[to] - lines[i].sum[from]) / length;
}

/** One number a figure: its score at best in the upper bits, its four lines in the lower 32. */
function rankedKeys(lines: Line[], cross: Crossings, leastArea: number, pictureArea: number): number[] {
  const keys: number[] = [];
  for (let i = 0; i < lines.length; i++) {
    for (let j = i + 1; j < lines.length; j++) {
      if (!opposite(lines[i], lines[j])) continue;
      const ends = endLines(lines, cross, i, j);
      for (let a = 0; a < ends.line.length; a++) {
        for (let b = a + 1; b < ends.line.length; b++) {
          const [k, l] = [ends.line[a], ends.line[b]];
          // Two pairs of opposite lines make the same figure from either pair.
          if (k < i && opposite(lines[k], lines[l])) continue;
          const si = supportBetween(lines, cross, i, k, l);
          if (si < leastSupport) continue;
          const sj = supportBetween(lines, cross, j, k, l);
          if (sj < leastSupport) continue;
          const size = convexArea(cross, i, k, j, l);
          if (size < leastArea) continue;
          const score = atBest(si, ends.support[a], sj, ends.support[b], size / pictureArea);
          keys.push(Math.floor(score * 2 ** 19) * 2 ** 32 + ((i * 256 + k) * 256 + j) * 256 + l);
        }
      }
    }
  }
  return keys;
}

/** Lines that could join i to j, with their evidence between the two. */
function endLines(lines: Line[], cross: Crossings, i: number, j: number) {
  const line: number[] = [];
  const support: number[] = [];
  for (let k = 0; k < lines.length; k++) {
    if (Number.isNaN(cross.x[k * cross.count + i] + cross.x[k * cross.count + j])) continue;
    const s = supportBetween(lines, cross, k, i, j);
    if (s <= leastSupport) continue;
    line.push(k);
    support.push(s);
  }
  return { line, support };
}

/** Area of the figure of lines i, k, j, l in this order; 0 where it is not well convex. */
function convexArea({ count, x, y }: Crossings, i: number, k: number, j: number, l: number): number {
  const [a, b, c, d] = [i * count + l, i * count + k, j * count + k, j * count + l];
  const first = turnAt(x, y, a, b, c);
  if (first === 0 || turnAt(x, y, b, c, d) !== first) return 0;
  if (turnAt(x, y, c, d, a) !== first || turnAt(x, y, d, a, b) !== first) return 0;
  return Math.abs((x[c] - x[a]) * (y[d] - y[b]) - (y[c] - y[a]) * (x[d] - x[b])) / 2;
}

/** Which way the path a b c turns at b: 1, -1, or 0 where hardly. */
function turnAt(x: Float64Array, y: Float64Array, a: number, b: number, c: number): number {
  const ux = x[b] - x[a];
  const uy = y[b] - y[a];
  const vx = x[c] - x[b];
  const vy = y[c] - y[b];
  const turn = ux * vy - uy * vx;
  const least = leastTurn * leastTurn * (ux * ux + uy * uy) * (vx * vx + vy * vy);
  return turn * turn < least ? 0 : Math.sign(turn);
}

function atBest(a: number, b: number, c: number, d: number, share: number): number {
  return 0.15 * (a + b + c + d) + 0.4 * Math.min(a, b, c, d) + 0.25 * Math.sqrt(share);
}

function quadOf(packed: number, lines: Line[], cross: Crossings, pictureArea: number): RoughQuad {
  const [i, k, j, l] = [24, 16, 8, 0].map((shift) => (packed >>> shift) & 255);
  const at = (p: number, q: number): Point => [cross.x[p * cross.count + q], cross.y[p * cross.count + q]];
  const support = [
    supportBetween(lines, cross, i, k, l),
    supportBetween(lines, cross, k, i, j),
    supportBetween(lines, cross, j, k, l),
    supportBetween(lines, cross, l, i, j),
  ] as const;
  const share = convexArea(cross, i, k, j, l) / pictureArea;
  const [a, b, c, d] = support;
  return {
    corners: [at(i, l), at(i, k), at(j, k), at(j, l)],
    sides: [i, k, j, l],
    support,
    share,
    atBest: atBest(a, b, c, d, share),
  };
}

/** Positive when the corners run clockwise as seen (y down). */
export function signedArea([a, b, c, d]: Quad): number {
  return ((c[0] - a[0]) * (d[1] - b[1]) - (c[1] - a[1]) * (d[0] - b[0])) / 2;
}
