import type { Card, CardPhoto } from '../../card/index.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import {
  baseSize,
  fitArtwork,
  layArtwork,
  pullArtwork,
  scaleArtwork,
  shiftArtwork,
} from '../../plan/index.ts';
import { call } from '../worker/client.ts';
import { editCard } from '../state/editCard.ts';
import { tellTrouble } from '../state/trouble.ts';

/** Artwork of the front, kept in the card among its photographs. */
export interface Artwork {
  base64: string;
  corners: Quad;
}

const sheet = 'front';

export function artworkOf({ photos }: Card): Artwork | undefined {
  const front = photos.find((photo) => photo.sheet === sheet && photo.base64 && photo.corners_px);
  return front?.base64 && front.corners_px ? { base64: front.base64, corners: front.corners_px } : undefined;
}

/** Lays a picture file beneath the plan, as large as the base allows. */
export async function takeArtwork(file: File): Promise<void> {
  try {
    const picture = await call('readArtwork', { name: file.name, file });
    editCard((card) =>
      withArtwork(card, {
        name: file.name,
        sheet,
        media: 'image/jpeg',
        base64: picture.base64,
        corners_px: tuple(fitArtwork(picture, baseSize(card))),
      }),
    );
  } catch (error) {
    tellTrouble(error);
  }
}

export function removeArtwork(card: Card): Card {
  return { ...card, photos: card.photos.filter((photo) => photo.sheet !== sheet) };
}

export function artworkShifted(card: Card, by: Point): Card {
  return placed(card, (corners) => shiftArtwork(corners, baseSize(card), by));
}

/** Scaled until two places of it lie so far apart, mm. */
export function artworkScaled(card: Card, a: Point, b: Point, apartMm: number): Card {
  return placed(card, (corners) => scaleArtwork(corners, baseSize(card), a, b, apartMm));
}

/** Laid by the front's own corners, tapped where they lie now. */
export function artworkLaid(card: Card, taps: Quad): Card {
  return placed(card, (corners) => layArtwork(corners, baseSize(card), taps));
}

/** Drawn out by one of the picture's own corners. */
export function artworkPulled(card: Card, picture: Size, k: number, to: Point): Card {
  return placed(card, (corners) => pullArtwork(corners, baseSize(card), picture, k, to));
}

type Size = { width: number; height: number };

function placed(card: Card, place: (corners: Quad) => Quad | undefined): Card {
  const photo = card.photos.find((each) => each.sheet === sheet);
  const corners = photo?.corners_px && place(photo.corners_px);
  return photo && corners ? withArtwork(card, { ...photo, corners_px: tuple(corners) }) : card;
}

function withArtwork(card: Card, photo: CardPhoto): Card {
  return { ...card, photos: [...removeArtwork(card).photos, photo] };
}

function tuple([a, b, c, d]: Quad): NonNullable<CardPhoto['corners_px']> {
  const pair = ([x, y]: Point): [number, number] => [x, y];
  return [pair(a), pair(b), pair(c), pair(d)];
}
