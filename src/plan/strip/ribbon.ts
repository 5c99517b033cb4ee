import type { Box, Point, Segment } from '../../geometry/index.ts';

/** A strip as it lies: its centre-line and full width, mm. */
export interface Ribbon {
  path: readonly Point[];
  widthMm: number;
}

export function segmentsOf(path: readonly Point[]): Segment[] {
  return path.slice(1).map((b, k) => [path[k], b] as const);
}

export function lengthOf(path: readonly Point[]): number {
  return segmentsOf(path).reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
}

/** Distance of a place to a straight piece, mm. */
export function distanceToSegment([x, y]: Point, [a, b]: Segment): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const t = square ? Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / square)) : 0;
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}

/** Distance of a place to a ribbon's copper, mm; 0 within it. Ends are cut square, corners round. */
export function distanceToRibbon([x, y]: Point, { path, widthMm }: Ribbon): number {
  const half = widthMm / 2;
  let least = Infinity;
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (!length) continue;
    const along = ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / length;
    const across = Math.abs((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / length;
    least = Math.min(least, Math.hypot(Math.max(0, -along, along - length), Math.max(0, across - half)));
    if (k > 1) least = Math.min(least, Math.max(0, Math.hypot(x - a[0], y - a[1]) - half));
  }
  return least;
}

export function boxOf(path: readonly Point[], margin = 0): Box {
  const xs = path.map(([x]) => x);
  const ys = path.map(([, y]) => y);
  return {
    x0: Math.min(...xs) - margin,
    y0: Math.min(...ys) - margin,
    x1: Math.max(...xs) + margin,
    y1: Math.max(...ys) + margin,
  };
}

/** Places every `step` mm along a path, with the unit vector along it there. */
export function walk(path: readonly Point[], step: number): { at: Point; along: Point }[] {
  const places: { at: Point; along: Point }[] = [];
  for (const [a, b] of segmentsOf(path)) {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (!length) continue;
    const along: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const n = Math.max(1, Math.round(length / step));
    for (let k = 0; k < n; k++) {
      const s = ((k + 0.5) * length) / n;
      places.push({ at: [a[0] + s * along[0], a[1] + s * along[1]], along });
    }
  }
  return places;
}
