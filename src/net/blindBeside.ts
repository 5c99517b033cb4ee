import type { Point } from '../geometry/index.ts';
import { pieceAt } from '../parts/index.ts';
import { isBlind, type Traced } from '../trace/index.ts';

const besideMm = 2;

/** Whether the tape itself is burnt out or black 2 mm from a place, to two of four sides at least. */
export function tapeBlindBeside(traced: Traced, at: Point): boolean {
  return around(at).filter((place) => pieceAt(traced, place) > 0 && isBlind(traced, place)).length > 1;
}

/** Whether the photograph is burnt out or black 2 mm from a place, to any of four sides. */
export function blindBeside(traced: Traced, at: Point): boolean {
  return around(at).some((place) => isBlind(traced, place));
}

function around([x, y]: Point): Point[] {
  return [
    [x + besideMm, y],
    [x - besideMm, y],
    [x, y + besideMm],
    [x, y - besideMm],
  ];
}
