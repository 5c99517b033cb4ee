import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { FoilproofError } from '../../src/words/index.ts';

/** 300 x 200 px, its four quarters red, green, blue and white, reading order. */
async function quarters() {
  const width = 300;
  const height = 200;
  const rgb = Buffer.alloc(width * height * 3);
  const colours = [
    [220, 20, 20],
    [20, 200, 20],
    [20, 20, 220],
    [250, 250, 250],
  ];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      rgb.set(colours[(x < 150 ? 0 : 1) + (y < 100 ? 0 : 2)], (y * width + x) * 3);
  return sharp(rgb, { raw: { width, height, channels: 3 } });
}

const at = (photo: Awaited<ReturnType<typeof decodePhoto>>, x: number, y: number) =>
  [...photo.rgba.slice((y * photo.width + x) * 4, (y * photo.width + x) * 4 + 4)]
    .map((v) => (v > 128 ? 1 : 0))
    .join('');

describe('decodePhoto', () => {
  // EXIF 2.3 (JEITA CP-3451C), tag 0x0112: where row 0 and column 0 of the stored picture are seen.
  it.each([
    [1, ['1001', '0101', '0011']],
    [2, ['0101', '1001', '1111']],
    [3, ['1111', '0011', '0101']],
    [4, ['0011', '1111', '1001']],
    [5, ['1001', '0011', '0101']],
    [6, ['0011', '1001', '1111']],
    [7, ['1111', '0101', '0011']],
    [8, ['0101', '1111', '1001']],
  ] as const)('applies EXIF orientation %i once', async (orientation, [topLeft, topRight, bottomLeft]) => {
    const photo = await decodePhoto(await (await quarters()).jpeg().withMetadata({ orientation }).toBuffer());
    const [w, h] = orientation > 4 ? [200, 300] : [300, 200];
    expect([photo.width, photo.height]).toEqual([w, h]);
    expect(photo.rgba.length).toBe(w * h * 4);
    expect([at(photo, 20, 20), at(photo, w - 20, 20), at(photo, 20, h - 20)]).toEqual([
      topLeft,
      topRight,
      bottomLeft,
    ]);
  });

  it('reads PNG with grey or with transparency, and WebP, as RGBA', async () => {
    const grey = await decodePhoto(await (await quarters()).greyscale().png().toBuffer());
    expect(grey.rgba.length).toBe(300 * 200 * 4);
    const webp = await decodePhoto(await (await quarters()).webp().toBuffer());
    expect(at(webp, 280, 20)).toBe('0101');
  });

  it.each([
    ['an empty file', async () => new Uint8Array(0), /0 bytes/],
    ['text', async () => new TextEncoder().encode('this is no picture, is it'), /not a photograph/],
    ['a GIF', async () => (await quarters()).gif().toBuffer(), /GIF file, which is not read/],
    ['one pixel', async () => (await quarters()).resize(1, 1).png().toBuffer(), /only 1 x 1 pixels/],
    [
      'a picture that breaks off',
      async () => (await (await quarters()).jpeg().toBuffer()).subarray(0, 1500),
      /breaks off/,
    ],
    [
      'a header alone',
      async () => (await (await quarters()).jpeg().toBuffer()).subarray(0, 40),
      /breaks off/,
    ],
    ['over 100 megapixels', async () => hugePng(), /144 megapixels; at most 100/],
    ['HEIC that cannot be decoded', async () => heic(), /HEIC/],
  ])('refuses %s with a sentence', async (_, make, sentence) => {
    const bytes = await make();
    await expect(decodePhoto(bytes, 'a.jpg')).rejects.toThrow(sentence);
    await expect(decodePhoto(bytes, 'a.jpg')).rejects.toBeInstanceOf(FoilproofError);
  });

  it('needs at most 8 bytes a pixel at its peak', async () => {
    const pixels = 12e6;
    const big = await sharp({ create: { width: 4000, height: 3000, channels: 3, background: '#987' } })
      .jpeg()
      .withMetadata({ orientation: 6 })
      .toBuffer();
    const before = process.memoryUsage.rss();
    let peak = before;
    const watch = setInterval(() => (peak = Math.max(peak, process.memoryUsage.rss())), 2);
    const photo = await decodePhoto(big);
    clearInterval(watch);
    expect(photo.width).toBe(3000);
    expect((peak - before) / pixels).toBeLessThan(8);
  });
});

/** A PNG whose header says 12000 x 12000; it is refused before a pixel is decoded, so it has none. */
async function hugePng(): Promise<Uint8Array> {
  const png = await (await quarters()).png().toBuffer();
  png.writeUInt32BE(12000, 16);
  png.writeUInt32BE(12000, 20);
  return png;
}

function heic(): Uint8Array {
  const bytes = new Uint8Array(2000);
  bytes.set(new TextEncoder().encode('ftypheic'), 4);
  return bytes;
}
