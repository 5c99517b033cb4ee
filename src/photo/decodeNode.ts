import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import sharp from 'sharp';
import { FoilproofError } from '../words/index.ts';
import { photoWords } from '../words/photo.ts';
import { checkFile, largestMegapixels } from './bounds.ts';
import type { Photo } from './types.ts';

/**
 * Reads a photograph in Node: a JPEG, PNG or WebP file, upright and in sRGB. Not for the browser.
 * @param file path, or the file's bytes
 * @param name shown in sentences; the file's own name unless given
 * @returns RGBA; memory is 4 bytes a pixel, plus at most as much again while decoding
 * @throws FoilproofError when the file is empty, damaged, no picture, or too small or large
 */
export async function decodePhoto(file: string | Uint8Array, name?: string): Promise<Photo> {
  const bytes = typeof file === 'string' ? await readFile(file) : file;
  const called = name ?? (typeof file === 'string' ? basename(file) : 'The photograph');
  const { kind } = checkFile(called, bytes);
  try {
    const { data, info } = await sharp(bytes, {
      failOn: 'truncated',
      limitInputPixels: largestMegapixels * 1e6,
    })
      .rotate()
      .toColourspace('srgb')
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    return {
      name: called,
      width: info.width,
      height: info.height,
      rgba: new Uint8Array(data.buffer, data.byteOffset, data.length),
    };
  } catch {
    throw new FoilproofError(kind === 'heic' ? photoWords.heic(called) : photoWords.truncated(called));
  }
}
