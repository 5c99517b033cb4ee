import type { WorkPicture } from './work.ts';

/** Edge pixels after thinning, each with its sub-pixel place and normal, by rising angle. Arrays of length `count`. */
export interface Edges {
  count: number;
  x: Float32Array;
  y: Float32Array;
  /** Angle of the normal, 0..pi. */
  angle: Float32Array;
  /** 0..1: how far the gradient stands above its surroundings. */
  weight: Float32Array;
}

/** The same edges in the px of a picture `times` as large. */
export function scaled(edges: Edges, times: number): Edges {
  return { ...edges, x: edges.x.map((v) => v * times), y: edges.y.map((v) => v * times) };
}

/** Below this gradient (levels a pixel) there is only noise, whatever the surroundings. */
const floorLevels = 1.1;
const surroundPx = 15;

/**
 * Colour edges, thinned. A gradient counts by how far it rises above the mean gradient round it, so that a faint
 * paper edge in shadow weighs as much as a hard one in light, and wood grain or cloth weighs little.
 * @source the colour gradient: S. Di Zenzo, A note on the gradient of a multi-image, CVGIP 33 (1986) (from memory)
 */
export function findEdges(work: WorkPicture): Edges {
  const { width, height } = work;
  const { size, angle } = gradient(work);
  const mean = boxMean(size, width, height, surroundPx);
  const out = { x: [] as number[], y: [] as number[], angle: [] as number[], weight: [] as number[] };
  for (let y = 2; y < height - 2; y++) {
    for (let x = 2; x < width - 2; x++) {
      const i = y * width + x;
      const g = size[i];
      const relative = g / (0.9 * mean[i] + floorLevels);
      if (relative < 1) continue;
      const nx = Math.cos(angle[i]);
      const ny = Math.sin(angle[i]);
      const step =
        Math.abs(nx) > 0.9239 ? 1 : Math.abs(ny) > 0.9239 ? width : nx * ny > 0 ? width + 1 : width - 1;
      const before = size[i - step];
      const after = size[i + step];
      if (g < before || g <= after) continue;
      const forward = step === 1 ? nx : ny;
      const shift = ((before - after) / (2 * (before - 2 * g + after) || -1)) * Math.sign(forward || 1);
      const reach = step === 1 || step === width ? 1 : Math.SQRT2;
      out.x.push(x + 0.5 + shift * reach * nx);
      out.y.push(y + 0.5 + shift * reach * ny);
      out.angle.push(angle[i]);
      out.weight.push(Math.min(1, (relative - 1) / 2 + 0.15));
    }
  }
  return byAngle(out);
}

/** Sorted by angle, so that the edges parallel to a line are a run or two of the arrays. */
function byAngle(found: Record<'x' | 'y' | 'angle' | 'weight', number[]>): Edges {
  const order = Uint32Array.from(found.x, (_, i) => i).sort((a, b) => found.angle[a] - found.angle[b]);
  const pick = (values: number[]) => {
    const sorted = new Float32Array(order.length);
    for (let i = 0; i < order.length; i++) sorted[i] = values[order[i]];
    return sorted;
  };
  const { x, y, angle, weight } = found;
  return { count: order.length, x: pick(x), y: pick(y), angle: pick(angle), weight: pick(weight) };
}

/** The runs [from, to) of edges whose normal lies within `reach` rad of an angle, direction aside. */
export function runsNear(edges: Edges, angle: number, reach: number): [number, number][] {
  const mid = ((angle % Math.PI) + Math.PI) % Math.PI;
  const first = (a: number) => firstAtLeast(edges.angle, a);
  const runs: [number, number][] = [[first(mid - reach), first(mid + reach)]];
  if (mid < reach) runs.push([first(Math.PI + mid - reach), edges.count]);
  if (mid > Math.PI - reach) runs.push([0, first(mid + reach - Math.PI)]);
  return runs;
}

function firstAtLeast(sorted: Float32Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (sorted[mid] < value) low = mid + 1;
    else high = mid;
  }
  return low;
}

/** Largest rate of change over the three planes and the angle 0..pi of its direction. */
function gradient({ width, height, planes }: WorkPicture) {
  const size = new Float32Array(width * height);
  const angle = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      let e = 0;
      let f = 0;
      let g = 0;
      for (const p of planes) {
        const gx = p[i + 1] - p[i - 1];
        const gy = p[i + width] - p[i - width];
        e += gx * gx;
        f += gx * gy;
        g += gy * gy;
      }
      const root = Math.sqrt((e - g) * (e - g) + 4 * f * f);
      size[i] = Math.sqrt((e + g + root) / 2);
      const a = 0.5 * Math.atan2(2 * f, e - g);
      angle[i] = a < 0 ? a + Math.PI : a;
    }
  }
  return { size, angle };
}

/** Mean over a square of 2 r + 1 px, by running sums; windows shrink at the border. */
function boxMean(p: Float32Array, width: number, height: number, r: number): Float32Array {
  const rows = new Float32Array(p.length);
  for (let y = 0; y < height; y++) {
    let sum = 0;
    for (let x = -r; x < width; x++) {
      if (x + r < width) sum += p[y * width + x + r];
      if (x - r - 1 >= 0) sum -= p[y * width + x - r - 1];
      if (x >= 0) rows[y * width + x] = sum / (Math.min(width - 1, x + r) - Math.max(0, x - r) + 1);
    }
  }
  const out = new Float32Array(p.length);
  const sums = new Float32Array(width);
  for (let y = -r; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (y + r < height) sums[x] += rows[(y + r) * width + x];
      if (y - r - 1 >= 0) sums[x] -= rows[(y - r - 1) * width + x];
      if (y >= 0) out[y * width + x] = sums[x] / (Math.min(height - 1, y + r) - Math.max(0, y - r) + 1);
    }
  }
  return out;
}
