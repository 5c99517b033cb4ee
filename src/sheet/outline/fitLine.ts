import type { Point } from '../../geometry/index.ts';

/** nx x + ny y = rho, with the scatter of the points that belong to it (px) and their share. */
export interface FittedLine {
  nx: number;
  ny: number;
  rho: number;
  scatter: number;
  inliers: number;
}

/**
 * Line through points of which many may belong to something else: the best of many two-point lines, then
 * least squares with Tukey's biweight.
 * @param tolerance px within which a point supports a line
 * @source M. A. Fischler, R. C. Bolles, CACM 24(6) 1981; J. W. Tukey's biweight (from memory)
 */
export function fitLine(points: Point[], tolerance: number): FittedLine | undefined {
  const n = points.length;
  if (n < 8) return undefined;
  let best: { nx: number; ny: number; rho: number } | undefined;
  let most = -1;
  for (let gap = Math.ceil(n * 0.3); gap < n; gap += Math.max(1, Math.floor(n / 12))) {
    for (let i = 0; i + gap < n; i += Math.max(1, Math.floor(n / 24))) {
      const line = through(points[i], points[i + gap]);
      if (!line) continue;
      let count = 0;
      for (const p of points) {
        const d = Math.abs(line.nx * p[0] + line.ny * p[1] - line.rho) / tolerance;
        if (d < 1) count += 1 - d * d;
      }
      if (count > most) {
        most = count;
        best = line;
      }
    }
  }
  return best && polish(points, best, tolerance);
}

function through(a: Point, b: Point) {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < 1) return undefined;
  const nx = -(b[1] - a[1]) / length;
  const ny = (b[0] - a[0]) / length;
  return { nx, ny, rho: nx * a[0] + ny * a[1] };
}

function polish(
  points: Point[],
  start: { nx: number; ny: number; rho: number },
  tolerance: number,
): FittedLine {
  let { nx, ny, rho } = start;
  for (let round = 0; round < 6; round++) {
    const reach = tolerance * (round < 2 ? 2 : 1.4);
    let sw = 0;
    let sx = 0;
    let sy = 0;
    let sxx = 0;
    let sxy = 0;
    let syy = 0;
    for (const [x, y] of points) {
      const d = (nx * x + ny * y - rho) / reach;
      if (Math.abs(d) >= 1) continue;
      const w = (1 - d * d) ** 2;
      sw += w;
      sx += w * x;
      sy += w * y;
      sxx += w * x * x;
      sxy += w * x * y;
      syy += w * y * y;
    }
    if (sw < 3) break;
    const mx = sx / sw;
    const my = sy / sw;
    const along = 0.5 * Math.atan2(2 * (sxy / sw - mx * my), sxx / sw - mx * mx - (syy / sw - my * my));
    nx = -Math.sin(along);
    ny = Math.cos(along);
    rho = nx * mx + ny * my;
  }
  const near = points.map(([x, y]) => Math.abs(nx * x + ny * y - rho)).filter((d) => d < tolerance);
  const scatter = Math.sqrt(near.reduce((s, d) => s + d * d, 0) / Math.max(1, near.length));
  return { nx, ny, rho, scatter, inliers: near.length / points.length };
}

export function meetLines(a: FittedLine, b: FittedLine): Point {
  const det = a.nx * b.ny - a.ny * b.nx;
  return [(a.rho * b.ny - b.rho * a.ny) / det, (a.nx * b.rho - b.nx * a.rho) / det];
}
