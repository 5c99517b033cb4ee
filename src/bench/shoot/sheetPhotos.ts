import type { Card, CardPhoto } from '../../card/index.ts';

/** A picture as a card holds it. */
export type Picture = Pick<CardPhoto, 'name' | 'media' | 'base64'>;

/** Whether a photograph of the card is one of a further sheet with copper. */
export function isSheetPhoto({ sheet, before, base64 }: CardPhoto): boolean {
  return base64 !== undefined && sheet !== 'front' && (sheet !== 'base' || before !== undefined);
}

/** @param choice 'flap F1' or 'before K1'; a photograph that stood for the same goes */
export function addSheetPhoto(card: Card, choice: string, picture: Picture): Card {
  const [what, id] = [choice.slice(0, choice.indexOf(' ')), choice.slice(choice.indexOf(' ') + 1)];
  const shows = what === 'flap' ? { sheet: id } : { sheet: 'base', before: id };
  const others = card.photos.filter(
    ({ sheet, before }) => !(sheet === shows.sheet && before === ('before' in shows ? id : undefined)),
  );
  return { ...card, photos: [...others, { ...picture, ...shows }] };
}

/** A file's picture as text. */
export async function pictureOf(file: File): Promise<Picture> {
  const url = await new Promise<string>((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error ?? new Error(file.name));
    reader.readAsDataURL(file);
  });
  const known = ['image/png', 'image/webp', 'image/heic'] as const;
  const media = known.find((each) => each === file.type) ?? ('image/jpeg' as const);
  return { name: file.name, media, base64: url.slice(url.indexOf(',') + 1) };
}
