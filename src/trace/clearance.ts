import type { Frame, PixelBox } from './frame.ts';
import { toMm } from './frame.ts';
import type { Clearance } from './types.ts';

/** Side of a coarse cell, px. */
const cell = 4;

/** A pair of pieces whose regions of influence meet, and the coarse cells of their nearest copper. */
interface Meeting {
  a: number;
  b: number;
  cellA: number;
  cellB: number;
  squared: number;
}

/** Coarse cells that are looked at: column and row of the first, and how many. */
interface Window {
  column: number;
  row: number;
  w: number;
  h: number;
}

/**
 * For every two pieces that lie within `mostMm` of each other with nothing nearer between them, their nearest places.
 * A coarse spreading of all pieces at once finds the pairs that meet, the full picture then gives the distance.
 * @param within pixels to look at; all unless given
 */
export function clearances(labels: Int32Array, frame: Frame, mostMm = 4, within?: PixelBox): Clearance[] {
  const { width, height, pxPerMm } = frame;
  const { i0, j0, i1, j1 } = within ?? { i0: 0, j0: 0, i1: width - 1, j1: height - 1 };
  const [column, row] = [Math.max(0, Math.floor(i0 / cell)), Math.max(0, Math.floor(j0 / cell))];
  const w = Math.floor(Math.min(width - 1, i1) / cell) - column + 1;
  const h = Math.floor(Math.min(height - 1, j1) / cell) - row + 1;
  const window = { column, row, w, h };
  const meetings = new Map<number, Meeting>();
  const meet = (a: number, b: number, cellA: number, cellB: number): void => {
    const [p, q, cp, cq] = a < b ? [a, b, cellA, cellB] : [b, a, cellB, cellA];
    const squared = ((cp % w) - (cq % w)) ** 2 + (Math.floor(cp / w) - Math.floor(cq / w)) ** 2;
    const key = p * 65536 + q;
    const known = meetings.get(key);
    if (!known || squared < known.squared) meetings.set(key, { a: p, b: q, cellA: cp, cellB: cq, squared });
  };
  const owner = coarseOwners(labels, frame, window, meet);
  spread(owner, w, h, Math.ceil((mostMm * pxPerMm) / cell / 2) + 1, meet);
  return [...meetings.values()]
    .map((meeting) => refine(labels, frame, meeting, window))
    .filter(({ mm }) => mm <= mostMm)
    .sort((p, q) => p.mm - q.mm);
}

/** Piece of each coarse cell; cells that hold two pieces make these meet at once. */
function coarseOwners(
  labels: Int32Array,
  { width, height }: Frame,
  { column, row, w, h }: Window,
  meet: (a: number, b: number, cellA: number, cellB: number) => void,
): Int32Array {
  const owner = new Int32Array(w * h);
  const i1 = Math.min(width, (column + w) * cell);
  for (let j = row * cell; j < Math.min(height, (row + h) * cell); j++) {
    const first = (Math.floor(j / cell) - row) * w - column;
    for (let i = column * cell, k = j * width + i; i < i1; i++, k++) {
      const id = labels[k];
      if (!id) continue;
      const c = first + ((i / cell) | 0);
      if (!owner[c]) owner[c] = id;
      else if (owner[c] !== id) meet(owner[c], id, c, c);
    }
  }
  return owner;
}

/** Lets all pieces grow cell by cell, `layers` times, each new cell remembering the copper it came from, and tells where two meet. */
function spread(
  owner: Int32Array,
  w: number,
  h: number,
  layers: number,
  meet: (a: number, b: number, cellA: number, cellB: number) => void,
): void {
  const source = new Int32Array(w * h).fill(-1);
  let front: number[] = [];
  for (let k = 0; k < owner.length; k++) {
    if (!owner[k]) continue;
    source[k] = k;
    const deep = owner[k - 1] && owner[k + 1] && owner[k - w] && owner[k + w];
    if (!deep || owner[k - 1] !== owner[k] || owner[k - w] !== owner[k]) front.push(k);
  }
  for (let layer = 0; layer <= layers && front.length; layer++) {
    const next: number[] = [];
    for (const k of front) {
      const from = source[k];
      for (const near of aroundCell(k, w, h)) {
        const other = source[near];
        if (other < 0) {
          source[near] = from;
          if (layer < layers) next.push(near);
        } else if (owner[other] !== owner[from]) meet(owner[from], owner[other], from, other);
      }
    }
    front = next;
  }
}

const eight: number[] = [];

/** The cells round cell k, up to eight; the list is used again by the next call. */
function aroundCell(k: number, w: number, h: number): number[] {
  const i = k % w;
  const j = (k - i) / w;
  eight.length = 0;
  for (let v = j > 0 ? -1 : 0; v <= (j + 1 < h ? 1 : 0); v++) {
    for (let u = i > 0 ? -1 : 0; u <= (i + 1 < w ? 1 : 0); u++) if (u || v) eight.push(k + v * w + u);
  }
  return eight;
}

/**
 * The nearest pixels of a and b round the coarse places, and again round what was found until it stays. The distance is
 * that between their facing sides.
 */
function refine(
  labels: Int32Array,
  frame: Frame,
  { a, b, cellA, cellB }: Meeting,
  window: Window,
): Clearance {
  let best = Infinity;
  let at = [0, 0, 0, 0];
  for (let round = 0; round < 4; round++) {
    const before = best;
    const placesB = pixelsNear(labels, frame, b, cellB, window);
    for (const [ax, ay] of pixelsNear(labels, frame, a, cellA, window)) {
      for (const [bx, by] of placesB) {
        const d = Math.max(0, Math.abs(ax - bx) - 1) ** 2 + Math.max(0, Math.abs(ay - by) - 1) ** 2;
        if (d < best) [best, at] = [d, [ax, ay, bx, by]];
      }
    }
    if (best >= before) break;
    cellA = cellOf(at[0], at[1], window);
    cellB = cellOf(at[2], at[3], window);
  }
  const atA = toMm(frame, at[0] + 0.5, at[1] + 0.5);
  const atB = toMm(frame, at[2] + 0.5, at[3] + 0.5);
  return { a, b, atA, atB, mm: Math.sqrt(best) / frame.pxPerMm };
}

const cellOf = (x: number, y: number, { column, row, w, h }: Window): number =>
  Math.min(h - 1, Math.max(0, Math.floor(y / cell) - row)) * w +
  Math.min(w - 1, Math.max(0, Math.floor(x / cell) - column));

/** Border pixels of a piece in a coarse cell and its neighbours. */
function pixelsNear(
  labels: Int32Array,
  { width, height }: Frame,
  id: number,
  at: number,
  { column, row, w }: Window,
): [number, number][] {
  const found: [number, number][] = [];
  const i0 = (column + (at % w)) * cell;
  const j0 = (row + Math.floor(at / w)) * cell;
  for (let j = Math.max(0, j0 - cell); j < Math.min(height, j0 + 2 * cell); j++) {
    for (let i = Math.max(0, i0 - cell); i < Math.min(width, i0 + 2 * cell); i++) {
      const k = j * width + i;
      if (labels[k] !== id) continue;
      const within =
        labels[k - 1] === id && labels[k + 1] === id && labels[k - width] === id && labels[k + width] === id;
      if (!within) found.push([i, j]);
    }
  }
  return found;
}
