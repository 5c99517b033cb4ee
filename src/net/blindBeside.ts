import type { Point } from '../geometry/index.ts';
import { isBlind, type Traced } from '../trace/index.ts';

const besideMm = 2;

/** Whether the photograph is burnt out or black 2 mm from a place, to any of four sides. */
export function blindBeside(traced: Traced, [x, y]: Point): boolean {
  const round: Point[] = [
    [x + besideMm, y],
    [x - besideMm, y],
    [x, y + besideMm],
    [x, y - besideMm],
  ];
  return round.some((place) => isBlind(traced, place));
}
