import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { disjointSets } from './unionFind.ts';

/** The narrowest place on the widest way between two places of copper. */
export interface Saddle {
  at: Point;
  widthMm: number;
}

/** Copper of some pieces at half the tracing's resolution, with its depth. */
export interface DepthField {
  width: number;
  height: number;
  pxPerMm: number;
  originMm: Point;
  /** Distance to the copper's border, px; 0 = no copper. */
  depth: Float32Array;
}

/** Depth of the copper of the given pieces, by a 3-4 chamfer transform (Borgefors 1986). */
export function depthField(traced: Traced, pieces: ReadonlySet<number>): DepthField {
  const width = Math.ceil(traced.width / 2);
  const height = Math.ceil(traced.height / 2);
  const far = width + height;
  const depth = new Float32Array(width * height);
  for (let y = 0; y < traced.height; y++) {
    for (let x = 0; x < traced.width; x++) {
      if (pieces.has(traced.labels[y * traced.width + x])) depth[(y >> 1) * width + (x >> 1)] = far;
    }
  }
  const field = { width, height, pxPerMm: traced.pxPerMm / 2, originMm: traced.originMm, depth };
  chamfer(field);
  return field;
}

function chamfer({ width, height, depth }: DepthField): void {
  const at = (x: number, y: number) =>
    x < 0 || y < 0 || x >= width || y >= height ? 0 : depth[y * width + x];
  const diagonal = 4 / 3;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (depth[i] === 0) continue;
      depth[i] = Math.min(
        depth[i],
        at(x - 1, y) + 1,
        at(x, y - 1) + 1,
        at(x - 1, y - 1) + diagonal,
        at(x + 1, y - 1) + diagonal,
      );
    }
  }
  for (let y = height - 1; y >= 0; y--) {
    for (let x = width - 1; x >= 0; x--) {
      const i = y * width + x;
      if (depth[i] === 0) continue;
      depth[i] = Math.min(
        depth[i],
        at(x + 1, y) + 1,
        at(x, y + 1) + 1,
        at(x + 1, y + 1) + diagonal,
        at(x - 1, y + 1) + diagonal,
      );
    }
  }
}

/**
 * Floods the copper from its deepest places outward until two places meet: where they meet is the bottleneck of the
 * widest way between them (maximum-capacity path, Pollack 1960; found by union in falling order of depth).
 *
 * @param jumps pairs of places joined otherwise (beneath a patch, by hand)
 * @returns undefined when no copper joins them
 */
export function saddleBetween(
  field: DepthField,
  from: Point,
  to: Point,
  jumps: readonly (readonly [Point, Point])[] = [],
): Saddle | undefined {
  const source = deepNear(field, from);
  const sink = deepNear(field, to);
  if (source < 0 || sink < 0) return undefined;
  const { width, depth, pxPerMm, originMm } = field;
  const sets = disjointSets(depth.length);
  for (const [a, b] of jumps) {
    const i = deepNear(field, a);
    const j = deepNear(field, b);
    if (i >= 0 && j >= 0) sets.join(i, j);
  }
  const done = new Uint8Array(depth.length);
  for (const i of byFallingDepth(depth)) {
    done[i] = 1;
    if (i % width > 0 && done[i - 1]) sets.join(i, i - 1);
    if (i % width < width - 1 && done[i + 1]) sets.join(i, i + 1);
    if (i >= width && done[i - width]) sets.join(i, i - width);
    if (i + width < depth.length && done[i + width]) sets.join(i, i + width);
    if (sets.find(source) !== sets.find(sink)) continue;
    const x = i % width;
    const y = (i - x) / width;
    return {
      at: [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm],
      widthMm: (2 * depth[i] - 1) / pxPerMm,
    };
  }
  return undefined;
}

/** Removes the copper round a place, to ask what still joins. */
export function cutAt(
  { width, height, pxPerMm, originMm, depth }: DepthField,
  at: Point,
  radiusMm: number,
): void {
  const cx = (at[0] - originMm[0]) * pxPerMm;
  const cy = (at[1] - originMm[1]) * pxPerMm;
  const r = radiusMm * pxPerMm;
  for (let y = Math.max(0, Math.floor(cy - r)); y <= Math.min(height - 1, cy + r); y++) {
    for (let x = Math.max(0, Math.floor(cx - r)); x <= Math.min(width - 1, cx + r); x++) {
      if (Math.hypot(x + 0.5 - cx, y + 0.5 - cy) <= r) depth[y * width + x] = 0;
    }
  }
}

/** The deepest pixel within 3 mm of a place that a climb from the nearest copper reaches, -1 = no copper there. */
function deepNear({ width, height, pxPerMm, originMm, depth }: DepthField, at: Point): number {
  const cx = Math.floor((at[0] - originMm[0]) * pxPerMm);
  const cy = Math.floor((at[1] - originMm[1]) * pxPerMm);
  const reach = Math.round(4 * pxPerMm);
  let start = -1;
  let least = Infinity;
  for (let y = Math.max(0, cy - reach); y <= Math.min(height - 1, cy + reach); y++) {
    for (let x = Math.max(0, cx - reach); x <= Math.min(width - 1, cx + reach); x++) {
      const d = (x - cx) ** 2 + (y - cy) ** 2;
      if (depth[y * width + x] > 0 && d < least) {
        least = d;
        start = y * width + x;
      }
    }
  }
  for (let here = start; here >= 0;) {
    const next = deepest(depth, width, here);
    if (next === here) return here;
    here = next;
  }
  return -1;
}

function deepest(depth: Float32Array, width: number, i: number): number {
  let best = i;
  for (const j of [
    i - 1,
    i + 1,
    i - width,
    i + width,
    i - width - 1,
    i - width + 1,
    i + width - 1,
    i + width + 1,
  ]) {
    if (j >= 0 && j < depth.length && depth[j] > depth[best]) best = j;
  }
  return best;
}

/** Indices of copper pixels, deepest first; depths are thirds of a pixel, so a counting sort is exact. */
function byFallingDepth(depth: Float32Array): Uint32Array {
  let most = 0;
  let n = 0;
  for (const d of depth) {
    if (d > most) most = d;
    if (d > 0) n++;
  }
  const key = (d: number) => Math.round((most - d) * 3);
  const starts = new Uint32Array(key(0) + 2);
  for (const d of depth) if (d > 0) starts[key(d) + 1]++;
  for (let k = 1; k < starts.length; k++) starts[k] += starts[k - 1];
  const order = new Uint32Array(n);
  for (let i = 0; i < depth.length; i++) if (depth[i] > 0) order[starts[key(depth[i])]++] = i;
  return order;
}
