import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';

/** Where foam belongs beside what is planned. */
export interface FoamPlaces {
  /** The cell: two layers on three of its sides. */
  cell?: Point;
  /** Past the last contact of the stroke row: one piece, so that the flap springs off again. */
  strokeEnd?: Point;
}

/** Room between the last contact and its foam, mm, where a row of one tells no step. */
const stepMm = 8;

/**
 * Places that need foam (common practice, no source): round the cell, and at the end of a stroke row, half a step past
 * its last contact. Everywhere else one layer keeps the front off the lamps.
 */
export function foamPlaces({ cell, contacts }: Pick<Card, 'cell' | 'contacts'>): FoamPlaces {
  const row = contacts
    .filter(({ how }) => how === 'stroke')
    .sort((a, b) => (a.order ?? 0) - (b.order ?? 0))
    .map(({ at }) => middleOf(at));
  const last = row.at(-1);
  const before = row.at(-2) ?? (last && ([last[0] - 2 * stepMm, last[1]] as const));
  const strokeEnd =
    last && before && ([last[0] + (last[0] - before[0]) / 2, last[1] + (last[1] - before[1]) / 2] as const);
  return { cell: cell?.at, strokeEnd };
}

function middleOf(at: Card['contacts'][number]['at']): Point {
  if (typeof at[0] === 'number') return at as Point;
  const [a, b] = at as [Point, Point];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
