import type { Card, CardPhoto } from '../../card/index.ts';
import type { SheetPhoto } from '../../check/index.ts';
import { decodePhotoInBrowser } from '../../photo/decodeBrowser.ts';
import type { Photo } from '../../photo/index.ts';

/** Pictures opened before, by their own text: a dragged corner opens none again. */
let opened = new Map<string, Photo>();

/** The photographs of further sheets that a card holds; the front's artwork is none. */
export async function sheetsOf({ photos }: Card): Promise<SheetPhoto[]> {
  const held = photos.filter(({ base64, sheet }) => base64 !== undefined && sheet !== 'front');
  const now = new Map<string, Photo>();
  const sheets: SheetPhoto[] = [];
  for (const { base64 = '', ...given } of held) {
    const photo = opened.get(base64) ?? (await decoded(base64, given));
    now.set(base64, photo);
    sheets.push({ photo, given });
  }
  opened = now;
  return sheets;
}

function decoded(base64: string, { name, media = 'image/jpeg' }: CardPhoto): Promise<Photo> {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return decodePhotoInBrowser(new Blob([bytes], { type: media }), name);
}
