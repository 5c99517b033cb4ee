import sharp from 'sharp';
import type { Binary } from './maskScore.ts';

/** A mask file as 1 and 0. */
export async function readBinary(path: string): Promise<Binary> {
  const { data, info } = await sharp(path)
    .toColourspace('b-w')
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const out = new Uint8Array(info.width * info.height);
  for (let i = 0; i < out.length; i++) out[i] = data[i * info.channels] > 127 ? 1 : 0;
  return { width: info.width, height: info.height, data: out };
}
