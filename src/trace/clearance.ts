import type { Frame } from './frame.ts';
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

/**
 * For every two pieces that lie within `mostMm` of each other with nothing nearer between them, their nearest places.
 * A coarse propagation of the nearest copper finds the pairs, the full picture then gives the distance.
 */
export function clearances(labels: Int32Array, frame: Frame, mostMm = 4): Clearance[] {
  const { width, height, pxPerMm } = frame;
  const w = Math.ceil(width / cell);
  const h = Math.ceil(height / cell);
  const meetings = new Map<number, Meeting>();
  const meet = (a: number, b: number, cellA: number, cellB: number): void => {
    const [p, q, cp, cq] = a < b ? [a, b, cellA, cellB] : [b, a, cellB, cellA];
    const squared = ((cp % w) - (cq % w)) ** 2 + (Math.floor(cp / w) - Math.floor(cq / w)) ** 2;
    const key = p * 65536 + q;
    const known = meetings.get(key);
    if (!known || squared < known.squared) meetings.set(key, { a: p, b: q, cellA: cp, cellB: cq, squared });
  };
  const owner = coarseOwners(labels, frame, w, h, meet);
  const source = propagate(owner, w, h);
  for (let j = 0, k = 0; j < h; j++) {
    for (let i = 0; i < w; i++, k++) {
      if (source[k] < 0) continue;
      for (const near of [i + 1 < w ? k + 1 : -1, j + 1 < h ? k + w : -1]) {
        if (near < 0 || source[near] < 0) continue;
        const a = owner[source[k]];
        const b = owner[source[near]];
        if (a !== b) meet(a, b, source[k], source[near]);
      }
    }
  }
  const most = mostMm * pxPerMm;
  return [...meetings.values()]
    .filter(({ squared }) => squared <= (most / cell + 3) ** 2)
    .map((meeting) => refine(labels, frame, meeting, w))
    .filter(({ mm }) => mm <= mostMm)
    .sort((p, q) => p.mm - q.mm);
}

/** Piece of each coarse cell; cells that hold two pieces make these meet at once. */
function coarseOwners(
  labels: Int32Array,
  { width, height }: Frame,
  w: number,
  h: number,
  meet: (a: number, b: number, cellA: number, cellB: number) => void,
): Int32Array {
  const owner = new Int32Array(w * h);
  for (let j = 0, k = 0; j < height; j++) {
    const row = (j >> 2) * w;
    for (let i = 0; i < width; i++, k++) {
      const id = labels[k];
      if (!id) continue;
      const c = row + (i >> 2);
      if (!owner[c]) owner[c] = id;
      else if (owner[c] !== id) meet(owner[c], id, c, c);
    }
  }
  return owner;
}

/** Nearest owned cell of each cell, -1 where there is none: two sweeps of the eight-neighbour vector propagation. */
function propagate(owner: Int32Array, w: number, h: number): Int32Array {
  const source = Int32Array.from(owner, (id, k) => (id ? k : -1));
  const sx = Int16Array.from(owner, (_, k) => k % w);
  const sy = Int16Array.from(owner, (_, k) => Math.floor(k / w));
  const pull = (k: number, i: number, j: number, near: number): void => {
    const from = source[near];
    if (from < 0 || from === source[k]) return;
    const d = (i - sx[from]) ** 2 + (j - sy[from]) ** 2;
    const own = source[k] < 0 ? Infinity : (i - sx[source[k]]) ** 2 + (j - sy[source[k]]) ** 2;
    if (d < own) source[k] = from;
  };
  for (let j = 0; j < h; j++) {
    for (let i = 0, k = j * w; i < w; i++, k++) {
      if (i) pull(k, i, j, k - 1);
      if (!j) continue;
      pull(k, i, j, k - w);
      if (i) pull(k, i, j, k - w - 1);
      if (i + 1 < w) pull(k, i, j, k - w + 1);
    }
    for (let i = w - 2, k = j * w + i; i >= 0; i--, k--) pull(k, i, j, k + 1);
  }
  for (let j = h - 1; j >= 0; j--) {
    for (let i = w - 1, k = j * w + i; i >= 0; i--, k--) {
      if (i + 1 < w) pull(k, i, j, k + 1);
      if (j + 1 >= h) continue;
      pull(k, i, j, k + w);
      if (i) pull(k, i, j, k + w - 1);
      if (i + 1 < w) pull(k, i, j, k + w + 1);
    }
    for (let i = 1, k = j * w + i; i < w; i++, k++) pull(k, i, j, k - 1);
  }
  return source;
}

/** The nearest pixels of a and b round the coarse places; the distance is that between their facing sides. */
function refine(labels: Int32Array, frame: Frame, { a, b, cellA, cellB }: Meeting, w: number): Clearance {
  const placesA = pixelsNear(labels, frame, a, cellA, w);
  const placesB = pixelsNear(labels, frame, b, cellB, w);
  let best = Infinity;
  let at = [0, 0, 0, 0];
  for (const [ax, ay] of placesA) {
    for (const [bx, by] of placesB) {
      const d = Math.max(0, Math.abs(ax - bx) - 1) ** 2 + Math.max(0, Math.abs(ay - by) - 1) ** 2;
      if (d < best) [best, at] = [d, [ax, ay, bx, by]];
    }
  }
  const atA = toMm(frame, at[0] + 0.5, at[1] + 0.5);
  const atB = toMm(frame, at[2] + 0.5, at[3] + 0.5);
  return { a, b, atA, atB, mm: Math.sqrt(best) / frame.pxPerMm };
}

function pixelsNear(
  labels: Int32Array,
  { width, height }: Frame,
  id: number,
  at: number,
  w: number,
): [number, number][] {
  const found: [number, number][] = [];
  const i0 = (at % w) * cell;
  const j0 = Math.floor(at / w) * cell;
  for (let j = Math.max(0, j0 - cell); j < Math.min(height, j0 + 2 * cell); j++) {
    for (let i = Math.max(0, i0 - cell); i < Math.min(width, i0 + 2 * cell); i++) {
      if (labels[j * width + i] === id) found.push([i, j]);
    }
  }
  return found;
}
