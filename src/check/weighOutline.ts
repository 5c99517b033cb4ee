import type { ScaleTold } from '../parts/scale/index.ts';
import type { Outline } from '../sheet/index.ts';

/** What is left of an outline's certainty where the scale speaks against it: too little to be believed by itself. */
const leastBelieved = 0.4;

/**
 * The outline in the light of what lies on the sheet: where tape, lamps or cell have another scale than the card states, another
 * figure was taken for the base, however clear its sides. Corners that the maker laid stand.
 */
export function weighOutline(outline: Outline, scale: ScaleTold | undefined): Outline {
  const { alone, ...rest } = outline;
  const own = { ...rest, certainty: alone ?? outline.certainty };
  if (own.certainty === 1 || !scale?.otherFigure) return own;
  return { ...own, certainty: Math.min(own.certainty, leastBelieved), alone: own.certainty };
}
