import { giveBack } from '../engine/giveBack.ts';
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
    premultiplyAlpha: kind === 'jpeg' ? 'default' : 'none',
  }).catch(() => {
    throw new FoilproofError(kind === 'heic' ? photoWords.heic(name) : photoWords.truncated(name));
  });
  try {
    checkSize(name, bitmap.width, bitmap.height);
    return { name, ...pixelsOf(bitmap, kind === 'jpeg') };
  } finally {
    bitmap.close();
  }
}

/** Rows that are read at a time: a canvas of the whole picture would hold it once more. */
const bandRows = 256;

/**
 * Row-major RGBA of a bitmap.
 * @param opaque where no pixel can be transparent, which is quicker
 */
export function pixelsOf(source: ImageBitmap, opaque = false): Pick<Photo, 'width' | 'height' | 'rgba'> {
  const { width, height } = source;
  const canvas = new OffscreenCanvas(width, Math.min(height, bandRows));
  const context = canvas.getContext('2d', { willReadFrequently: true, alpha: !opaque });
  if (!context) throw new FoilproofError(photoWords.noCanvas);
  // Each band writes over the one before, transparent pixels too.
  if (!opaque) context.globalCompositeOperation = 'copy';
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y += bandRows) {
    const rows = Math.min(bandRows, height - y);
    context.drawImage(source, 0, y, width, rows, 0, 0, width, rows);
    const band = context.getImageData(0, 0, width, rows).data;
    rgba.set(band, 4 * width * y);
    giveBack(band);
  }
  return { width, height, rgba };
}
