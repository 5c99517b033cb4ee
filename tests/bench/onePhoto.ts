import { cardSchema } from '../../src/card/index.ts';
import { check } from '../../src/check/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { readFile } from 'node:fs/promises';
import sharp from 'sharp';

/**
 * One check in a process of its own, so that its peak memory is its own: `tsx onePhoto.ts PHOTO CARD MEGAPIXELS`.
 * Prints one line of JSON. MEGAPIXELS 0 loads everything and checks nothing.
 */
const [photoPath, cardPath, wanted] = process.argv.slice(2);
const card = cardSchema.parse(JSON.parse(await readFile(cardPath, 'utf8')));
const megapixels = Number(wanted);

if (megapixels === 0) say({ megapixels: 0, timings: {} });
else await measure();

async function measure(): Promise<void> {
  const { width = 1, height = 1 } = await sharp(photoPath).metadata();
  const scale = Math.sqrt((megapixels * 1e6) / (width * height));
  const jpeg = await sharp(photoPath)
    .resize(Math.round(width * scale), Math.round(height * scale))
    .jpeg({ quality: 88 })
    .toBuffer();
  const begun = performance.now();
  const photo = await decodePhoto(jpeg, 'bench.jpg');
  const decode = performance.now() - begun;
  const checked = await check(photo, card);
  say({ megapixels: (photo.width * photo.height) / 1e6, timings: { ...checked.timingsMs, decode } });
}

function say(result: { megapixels: number; timings: Record<string, number> }): void {
  // maxRSS is in kilobytes.
  const peakMB = process.resourceUsage().maxRSS / 1024;
  process.stdout.write(`${JSON.stringify({ ...result, peakMB })}\n`);
}
