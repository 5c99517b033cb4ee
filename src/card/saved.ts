import { FoilproofError } from '../words/error.ts';
import { cardWords } from '../words/card.ts';
import { parseCard } from './parseCard.ts';
import type { Card, CardPhoto } from './schema.ts';

/** A photograph beside its card. */
export interface SavedPhoto {
  name: string;
  file: Blob;
  taken?: string;
}

/**
 * Reads a card file with the base's photographs in it, if it has any: the first, and further shots of the same sheet.
 * The pictures are taken out of the card, so that the card on the bench stays small.
 * @throws FoilproofError naming the key that is wrong
 */
export function openCardText(
  text: string,
  name: string,
): { card: Card; photo?: SavedPhoto; again: SavedPhoto[] } {
  const card = parseCard(text, name);
  const isWithin = ({ sheet, base64, before }: CardPhoto) =>
    sheet === 'base' && base64 !== undefined && before === undefined;
  const within = card.photos.flatMap((photo, i) =>
    isWithin(photo) ? [{ ...photo, key: `photos[${i}]` }] : [],
  );
  const [photo, ...again] = within.map(({ base64 = '', media, name: file, taken, key }) => ({
    name: file,
    file: blobOf(base64, media, `${key}.base64`, name),
    taken,
  }));
  const photos = card.photos.filter((each) => !isWithin(each));
  return { card: { ...card, photos, corners_px: card.corners_px ?? within[0]?.corners_px }, photo, again };
}

/** A card file's text, with its photographs in it or without. */
export async function cardText(card: Card, pictures: readonly SavedPhoto[] = []): Promise<string> {
  const within = await Promise.all(pictures.map(withPicture));
  return JSON.stringify({ ...card, photos: [...card.photos, ...within] }, null, 1);
}

async function withPicture({ name, file, taken }: SavedPhoto): Promise<CardPhoto> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { name, sheet: 'base', taken, media: mediaOf(file.type), base64: base64Of(bytes) };
}

function mediaOf(type: string): CardPhoto['media'] {
  if (type === 'image/png' || type === 'image/webp' || type === 'image/heic') return type;
  return 'image/jpeg';
}

function base64Of(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let k = 0; k < bytes.length; k += 0x8000) {
    parts.push(String.fromCharCode(...bytes.subarray(k, k + 0x8000)));
  }
  return btoa(parts.join(''));
}

function blobOf(base64: string, media: CardPhoto['media'], where: string, name: string): Blob {
  try {
    const text = atob(base64);
    return new Blob([Uint8Array.from(text, (letter) => letter.charCodeAt(0))], {
      type: media ?? 'image/jpeg',
    });
  } catch {
    throw new FoilproofError(cardWords.wrong(name, where, cardWords.notBase64));
  }
}
