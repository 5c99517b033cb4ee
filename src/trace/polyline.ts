import type { Point } from '../geometry/index.ts';

export const pathLength = (path: readonly Point[]): number => {
  let sum = 0;
  for (let k = 1; k < path.length; k++)
    sum += Math.hypot(path[k][0] - path[k - 1][0], path[k][1] - path[k - 1][1]);
  return sum;
};

/** The path at even steps of about `step`, its ends kept. */
export function resample(path: readonly Point[], step: number): Point[] {
  const total = pathLength(path);
  const n = Math.max(1, Math.round(total / step));
  const out: Point[] = [path[0]];
  let k = 1;
  let passed = 0;
  for (let s = 1; s < n; s++) {
    const want = (s * total) / n;
    let span = Math.hypot(path[k][0] - path[k - 1][0], path[k][1] - path[k - 1][1]);
    while (passed + span < want && k < path.length - 1) {
      passed += span;
      k++;
      span = Math.hypot(path[k][0] - path[k - 1][0], path[k][1] - path[k - 1][1]);
    }
    const t = span ? (want - passed) / span : 0;
    out.push([
      path[k - 1][0] + t * (path[k][0] - path[k - 1][0]),
      path[k - 1][1] + t * (path[k][1] - path[k - 1][1]),
    ]);
  }
  out.push(path[path.length - 1]);
  return out;
}

/** Mean over `reach` neighbours on each side, fewer near the ends so that these stay where they are. */
export function smoothPath(path: readonly Point[], reach: number): Point[] {
  return path.map((_, k) => {
    const r = Math.min(reach, k, path.length - 1 - k);
    let x = 0;
    let y = 0;
    for (let n = k - r; n <= k + r; n++) {
      x += path[n][0];
      y += path[n][1];
    }
    return [x / (2 * r + 1), y / (2 * r + 1)];
  });
}

/** Unit vector along the path at its k-th point, over `reach` points on each side. */
export function tangent(path: readonly Point[], k: number, reach: number): Point {
  const a = path[Math.max(0, k - reach)];
  const b = path[Math.min(path.length - 1, k + reach)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

export function median(values: readonly number[]): number {
  if (!values.length) return 0;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}
