import type { EncodedImage } from '../../record/drawing/types.ts';
import { dataUrl } from './dataUrl.ts';

/**
 * A picture as a JPEG within a record; drawn anew, so that nothing but its pixels goes along.
 * @param longestPx it is made smaller than this where it is larger
 */
export async function encoded(
  picture: ImageBitmap,
  { longestPx = Infinity, quality = 0.9 }: { longestPx?: number; quality?: number } = {},
): Promise<EncodedImage> {
  const scale = Math.min(1, longestPx / Math.max(picture.width, picture.height));
  const [width, height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (context) context.imageSmoothingQuality = 'high';
  context?.drawImage(picture, 0, 0, width, height);
  const url = await dataUrl(await canvas.convertToBlob({ type: 'image/jpeg', quality }));
  return { media: 'image/jpeg', base64: url.slice(url.indexOf(',') + 1), width, height };
}
