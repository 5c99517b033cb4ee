import type { Point } from '../geometry/index.ts';
import type { CentreLine } from '../trace/index.ts';

/** A place on a centre-line: how far along it, and how far off it the place asked for was, mm. */
export interface Foot {
  line: number;
  alongMm: number;
  offMm: number;
}

/** The nearest place to `at` on any of the lines; undefined without lines. */
export function footOn(lines: readonly CentreLine[], at: Point): Foot | undefined {
  let best: Foot | undefined;
  lines.forEach(({ path }, line) => {
    let along = 0;
    for (let i = 1; i < path.length; i++) {
      const [a, b] = [path[i - 1] as Point, path[i] as Point];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const t =
        length > 0
          ? clamp(((at[0] - a[0]) * (b[0] - a[0]) + (at[1] - a[1]) * (b[1] - a[1])) / length ** 2)
          : 0;
      const offMm = Math.hypot(a[0] + t * (b[0] - a[0]) - at[0], a[1] + t * (b[1] - a[1]) - at[1]);
      if (!best || offMm < best.offMm) best = { line, alongMm: along + t * length, offMm };
      along += length;
    }
  });
  return best;
}

/** Length over width along a stretch of a centre-line: its number of squares, which times the sheet resistance is its resistance. */
export function squares({ path, widths }: CentreLine, fromMm: number, toMm: number): number {
  let along = 0;
  let sum = 0;
  for (let i = 1; i < path.length && along < toMm; i++) {
    const [a, b] = [path[i - 1] as Point, path[i] as Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const part = Math.min(toMm, along + length) - Math.max(fromMm, along);
    const width = Math.max(0.1, ((widths[i - 1] ?? 0) + (widths[i] ?? 0)) / 2);
    if (part > 0) sum += part / width;
    along += length;
  }
  return sum;
}

/** Length of a path, mm. */
export function pathLength(path: readonly Point[]): number {
  return path.slice(1).reduce((sum, [x, y], i) => {
    const [px, py] = path[i] as Point;
    return sum + Math.hypot(x - px, y - py);
  }, 0);
}

function clamp(t: number): number {
  return Math.min(1, Math.max(0, t));
}
