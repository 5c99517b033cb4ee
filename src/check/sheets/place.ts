import type { Card, CardPhoto } from '../../card/index.ts';
import { foldWords } from '../../words/fold.ts';
import { FoilproofError } from '../../words/index.ts';
import type { CheckOptions } from '../options.ts';
import { place } from '../place.ts';
import type { PlacedSheet, SheetPhoto } from './types.ts';

/**
 * Squares up a further photograph in its own frame, at the base's scale.
 * @throws FoilproofError where it names a flap that the card does not have
 */
export async function placeSheet(
  { photo, given }: SheetPhoto,
  card: Card,
  pxPerMm: number,
  options: CheckOptions,
): Promise<PlacedSheet> {
  const own = cardOfSheet(given, card);
  const placed = await place(photo, own, { ...options, outline: undefined, pxPerMm });
  return { given, ...placed };
}

/** The card as far as it speaks of this sheet alone: its size and corners; of the base also what tells top from bottom. */
function cardOfSheet(given: CardPhoto, card: Card): Card {
  const { corners_px, size_mm } = given;
  if (given.sheet === 'base' && !size_mm)
    return { ...card, base: { ...card.base, margin_mm: 0 }, corners_px };
  const [width_mm, height_mm] = size_mm ?? outlineSize(given, card);
  return { ...card, base: { width_mm, height_mm, margin_mm: 0 }, corners_px, lamps: [], plan: undefined };
}

function outlineSize({ name, sheet }: CardPhoto, card: Card): [number, number] {
  const flap = card.flaps.find(({ id }) => id === sheet);
  if (!flap) throw new FoilproofError(foldWords.unknownSheet(name, sheet));
  const xs = flap.outline.map(([x]) => x);
  const ys = flap.outline.map(([, y]) => y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
