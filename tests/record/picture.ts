import sharp from 'sharp';
import type { EncodedImage } from '../../src/record/index.ts';

/** A plain picture of one colour, encoded. */
export async function plainPicture(width = 105, height = 148): Promise<EncodedImage> {
  const create = { width, height, channels: 3 as const, background: { r: 40, g: 90, b: 160 } };
  const bytes = await sharp({ create }).png().toBuffer();
  return { media: 'image/png', base64: bytes.toString('base64'), width, height };
}
