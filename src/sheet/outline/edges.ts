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
  const size = gradientSizes(work);
  const mean = boxMean(size, width, height, surroundPx);
  const normal = new Float64Array(2);
  const found = { x: [] as number[], y: [] as number[], angle: [] as number[], weight: [] as number[] };
  for (let y = 2; y < height - 2; y++) {
    for (let x = 2; x < width - 2; x++) {
      const i = y * width + x;
      const relative = size[i] / (0.9 * mean[i] + floorLevels);
      if (relative < 1) continue;
      setNormal(work, i, normal);
      const [nx, ny] = normal;
      const shift = crestShift(size, i, width, nx, ny);
      if (shift === undefined) continue;
      found.x.push(x + 0.5 + shift * nx);
      found.y.push(y + 0.5 + shift * ny);
      found.angle.push(Math.atan2(ny, nx));
      found.weight.push(Math.min(1, (relative - 1) / 2 + 0.15));
    }
  }
  return byAngle(found);
}

/** How far along the normal the crest of the gradient lies from a pixel, px; undefined where it is not on the crest. */
function crestShift(
  size: Float32Array,
  i: number,
  width: number,
  nx: number,
  ny: number,
): number | undefined {
  const step =
    Math.abs(nx) > 0.9239 ? 1 : Math.abs(ny) > 0.9239 ? width : nx * ny > 0 ? width + 1 : width - 1;
  const before = size[i - step];
  const after = size[i + step];
  const own = size[i];
  if (own < before || own <= after) return undefined;
  const forward = step === 1 ? nx : ny;
  const reach = step === 1 || step === width ? 1 : Math.SQRT2;
  return reach * ((before - after) / (2 * (before - 2 * own + after) || -1)) * Math.sign(forward || 1);
}

/** Sorted by angle, so that the edges parallel to a line are a run or two of the arrays. */
function byAngle(found: Record<'x' | 'y' | 'angle' | 'weight', number[]>): Edges {
  const count = found.x.length;
  // Angle and index in one number: typed arrays sort numbers far faster than by a comparison.
  const keys = new Float64Array(count);
  for (let i = 0; i < count; i++) keys[i] = Math.floor(found.angle[i] * 2 ** 26) * 2 ** 24 + i;
  keys.sort();
  const pick = (values: number[]) => {
    const sorted = new Float32Array(count);
    for (let i = 0; i < count; i++) sorted[i] = values[keys[i] % 2 ** 24];
    return sorted;
  };
  const { x, y, angle, weight } = found;
  return { count, x: pick(x), y: pick(y), angle: pick(angle), weight: pick(weight) };
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

/** Largest rate of change over the three planes, at each pixel but the outermost. */
function gradientSizes({ width, height, planes: [p, q, r] }: WorkPicture): Float32Array {
  const size = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++) {
    for (let i = y * width + 1, end = i + width - 2; i < end; i++) {
      const px = p[i + 1] - p[i - 1];
      const py = p[i + width] - p[i - width];
      const qx = q[i + 1] - q[i - 1];
      const qy = q[i + width] - q[i - width];
      const rx = r[i + 1] - r[i - 1];
      const ry = r[i + width] - r[i - width];
      const e = px * px + qx * qx + rx * rx;
      const f = px * py + qx * qy + rx * ry;
      const g = py * py + qy * qy + ry * ry;
      size[i] = Math.sqrt((e + g + Math.sqrt((e - g) * (e - g) + 4 * f * f)) / 2);
    }
  }
  return size;
}

/** Unit vector of the largest rate of change at a pixel, y not negative: half the angle whose tangent is 2 f over the difference. */
function setNormal({ width, planes }: WorkPicture, i: number, normal: Float64Array): void {
  let difference = 0;
  let f = 0;
  for (const p of planes) {
    const gx = p[i + 1] - p[i - 1];
    const gy = p[i + width] - p[i - width];
    difference += gx * gx - gy * gy;
    f += gx * gy;
  }
  const cosine = difference / (Math.sqrt(difference * difference + 4 * f * f) || 1);
  normal[0] = Math.sqrt((1 + cosine) / 2) * (f < 0 ? -1 : 1);
  normal[1] = Math.sqrt((1 - cosine) / 2);
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
