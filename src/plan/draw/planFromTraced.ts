import type { PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Traced } from '../../trace/index.ts';
import { simplifyPath } from '../../trace/simplify.ts';
import { lengthOf } from '../strip/ribbon.ts';

/** A centre-line may leave its polyline by this much. */
const SLACK_MM = 0.8;
/** Shorter stretches are burrs of the centre-line, unless they are all that a piece has. */
const LEAST_MM = 4;

/**
 * A plan out of a photograph of a finished card or of a sketch in bold strokes: each stretch of centre-line becomes a
 * strip, straightened, its width the median along it to a tenth; the strips of one piece are one net.
 */
export function planFromTraced({ pieces }: Traced): PlanStrip[] {
  return pieces.flatMap((piece) => {
    const lines = piece.lines.filter(({ lengthMm }) => lengthMm >= LEAST_MM);
    return (lines.length ? lines : piece.lines.slice(0, 1)).map((line, k) => ({
      id: `${piece.id}${lines.length > 1 ? `.${k + 1}` : ''}`,
      net: `n${piece.id}`,
      width_mm: Math.max(0.5, Math.round(10 * median(line.widths)) / 10),
      path: withEnds(
        simplifyPath(line.path, SLACK_MM),
        piece.ends.map(({ at }) => at),
      ),
      on: 'base',
    }));
  });
}

/** Centre-lines stop short of a strip's ends: where an end lies just beyond, the path goes on to it. */
function withEnds(path: Point[], ends: Point[]): [number, number][] {
  const full = [...path];
  const first = ends.find((e) => near(e, full[0]));
  if (first) full[0] = first;
  const last = ends.find((e) => e !== first && near(e, full[full.length - 1]));
  if (last) full[full.length - 1] = last;
  return (lengthOf(full) > 0 ? full : path).map(([x, y]): [number, number] => [x, y]);
}

const END_REACH_MM = 4;
const near = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) < END_REACH_MM;

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length ? sorted[sorted.length >> 1] : 1;
}
