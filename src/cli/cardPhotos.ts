import { access } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import type { Card, CardPhoto } from '../card/index.ts';
import { foldWords } from '../words/fold.ts';
import { FoilproofError } from '../words/index.ts';

/** A photograph of a further sheet of the card, by the path of its file. */
export interface SheetFile {
  path: string;
  given: CardPhoto;
}

/** The photographs that a card file names: the base as it is now, and its other sheets. */
export interface CardPhotos {
  photo: string;
  /** What the card says of it. */
  base: CardPhoto;
  /** The card with the corners of that photograph. */
  card: Card;
  sheets: SheetFile[];
}

/**
 * What to check where the command names no photograph: those that the card names, their paths from its folder on.
 * @throws FoilproofError where none shows the base, or one is not there
 */
export async function cardPhotos(card: Card, cardPath: string): Promise<CardPhotos> {
  const files = card.photos
    .filter(({ base64, sheet }) => base64 === undefined && sheet !== 'front')
    .map((given): SheetFile => ({ given, path: resolve(dirname(cardPath), given.name) }));
  const now = files.findLast(
    ({ given: { sheet, before, fold_of } }) =>
      sheet === 'base' && before === undefined && fold_of === undefined,
  );
  if (!now) throw new FoilproofError(foldWords.noBasePhoto);
  for (const { path, given } of files)
    await access(path).catch(() => {
      throw new FoilproofError(foldWords.pictureGone(given.name));
    });
  const corners_px = now.given.corners_px ?? card.corners_px;
  return {
    photo: now.path,
    base: now.given,
    card: { ...card, corners_px },
    sheets: files.filter((each) => each !== now),
  };
}
