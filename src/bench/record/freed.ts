import type { CardPhoto } from '../../card/index.ts';
import type { SavedPhoto } from '../../card/saved.ts';
import { withoutPlace } from '../../photo/withoutPlace.ts';
import { FoilproofError } from '../../words/error.ts';
import { shareWords } from '../../words/share.ts';
import { dataUrl } from './dataUrl.ts';

/**
 * A photograph without place, time and device, ready to leave this device; drawn anew where its file cannot be freed
 * as it is (HEIC on a device that shows it).
 * @throws FoilproofError where neither can be done
 */
export async function freed<Photo extends SavedPhoto>(photo: Photo): Promise<Photo> {
  const bytes = withoutPlace(new Uint8Array(await photo.file.arrayBuffer()));
  if (bytes) return { ...photo, file: new Blob([bytes as BlobPart], { type: photo.file.type }) };
  return { ...photo, file: await drawnAnew(photo) };
}

/** Pictures within a card, freed likewise. */
export async function freedWithin(photo: CardPhoto): Promise<CardPhoto> {
  if (photo.base64 === undefined) return photo;
  const response = await fetch(`data:${photo.media ?? 'image/jpeg'};base64,${photo.base64}`);
  const { file } = await freed({ name: photo.name, file: await response.blob() });
  const [head, base64] = (await dataUrl(file)).split(',');
  return { ...photo, base64, ...(head.includes('jpeg') ? { media: 'image/jpeg' } : {}) };
}

async function drawnAnew({ name, file }: SavedPhoto): Promise<Blob> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new FoilproofError(shareWords.notFreed(name));
  });
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
}
