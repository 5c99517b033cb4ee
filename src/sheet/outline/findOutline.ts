import type { Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import type { BaseMap } from '../learned/index.ts';
import type { Outline } from '../types.ts';
import { cutOut } from './cutOut.ts';
import { look, proposeOutlines } from './propose.ts';
import type { BaseMm } from './propose.ts';

export interface FindOptions {
  /** Where a learned segmenter believes the base to be; lines and ranking then heed it. */
  baseMap?: BaseMap;
}

/** Under this the picture is looked at a second time, by colour. */
const sure = 0.6;

/**
 * Finds the base in a photograph by its four sides. The turn cannot be known from the outline alone: the corners
 * begin at the one nearest the picture's top left that the base's shape allows (`turnCorners` gives the others).
 * Where the straight edges alone leave it in doubt, the sheet is cut out of the picture by its colours and the
 * border of that joins the search.
 * @param base its size in mm; undefined when not known, which makes the answer less certain
 * @returns undefined when nothing like a base is seen
 */
export async function findOutline(
  photo: Photo,
  base: BaseMm | undefined,
  { baseMap }: FindOptions = {},
): Promise<Outline | undefined> {
  const seen = look(photo);
  const first = proposeOutlines(photo, seen, base, { net: baseMap })[0];
  if (first && first.outline.certainty >= sure) return first.outline;
  const cut = await cutOut(seen.work, first && onWork(first.outline.cornersPx, seen.work.step));
  const second = proposeOutlines(photo, seen, base, { net: baseMap, cut })[0];
  if (!first || (second && second.outline.certainty > first.outline.certainty)) return second?.outline;
  return first.outline;
}

const onWork = (quad: Quad, step: number) => quad.map(([x, y]) => [x / step, y / step]) as unknown as Quad;
