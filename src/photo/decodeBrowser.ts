import { FoilproofError } from '../words/index.ts';
import { photoWords } from '../words/photo.ts';
import { checkFile, checkSize } from './bounds.ts';
import type { Photo } from './types.ts';

/**
 * Reads a photograph in the browser (page or worker), upright. The picture's own colour profile is taken to sRGB.
 * @param file what was chosen, dropped, pasted or shot
 * @throws FoilproofError when the file is empty, damaged, no picture, or too small or large
 */
export async function decodePhotoInBrowser(file: Blob, name: string): Promise<Photo> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { kind } = checkFile(name, bytes);
  const bitmap = await createImageBitmap(file, {
    imageOrientation: 'from-image',
    premultiplyAlpha: 'none',
  }).catch(() => {
    throw new FoilproofError(kind === 'heic' ? photoWords.heic(name) : photoWords.truncated(name));
  });
  try {
    checkSize(name, bitmap.width, bitmap.height);
    return { name, ...pixelsOf(bitmap) };
  } finally {
    bitmap.close();
  }
}

/** Row-major RGBA of a bitmap or a video frame. */
export function pixelsOf(source: ImageBitmap): Pick<Photo, 'width' | 'height' | 'rgba'> {
  const { width, height } = source;
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new FoilproofError(photoWords.noCanvas);
  context.drawImage(source, 0, 0);
  return { width, height, rgba: context.getImageData(0, 0, width, height).data };
}
