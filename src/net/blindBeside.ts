import type { Point } from '../geometry/index.ts';
import { pieceAt } from '../parts/index.ts';
import { isBlind, type Traced } from '../trace/index.ts';

const besideMm = 2;

/** How far a strip beside a bridge is looked for, mm. */
const stripMm = [2, 3, 4];

/** Whether the tape itself is burnt out or black a little way from a place, to two of four sides at least. */
export function tapeBlindBeside(traced: Traced, at: Point): boolean {
  const burnt = (place: Point) => pieceAt(traced, place) > 0 && isBlind(traced, place);
  return [0, 1, 2, 3].filter((side) => stripMm.some((mm) => burnt(around(at, mm)[side]))).length > 1;
}

/** Whether the photograph is burnt out or black 2 mm from a place, to any of four sides. */
export function blindBeside(traced: Traced, at: Point): boolean {
  return around(at, besideMm).some((place) => isBlind(traced, place));
}

function around([x, y]: Point, mm: number): Point[] {
  return [
    [x + mm, y],
    [x - mm, y],
    [x, y + mm],
    [x, y - mm],
  ];
}
