import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

/** A still picture as a film of JPEG frames, as Chromium's fake camera reads it. */
export async function fakeCamera(photo: string, folder: string): Promise<string> {
  const frame = await sharp(photo).resize(960, 1280, { fit: 'cover' }).jpeg({ quality: 90 }).toBuffer();
  const file = join(folder, 'camera.mjpeg');
  writeFileSync(file, Buffer.concat(Array.from({ length: 8 }, () => frame)));
  return file;
}
