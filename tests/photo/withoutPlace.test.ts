import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { withoutPlace } from '../../src/photo/withoutPlace.ts';

/** Written and read back by sharp (libvips, libexif), an implementation outside the project. */
const exif = {
  IFD0: { Make: 'A camera' },
  IFD2: { DateTimeOriginal: '2026:05:01 12:00:00' },
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '47/1 22/1 0/1',
    GPSLongitudeRef: 'E',
    GPSLongitude: '8/1 32/1 0/1',
  },
};
const picture = () =>
  sharp({
    create: {
      width: 90,
      height: 60,
      channels: 3,
      noise: { type: 'gaussian', mean: 128, sigma: 30 },
      background: 'grey',
    },
  });

test.each(['jpeg', 'png', 'webp'] as const)(
  'takes place, time and device out of a %s, pixels untouched',
  async (kind) => {
    const given = await picture()
      .withExif(exif)
      .withMetadata({ orientation: 6 })
      .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><place>47.3667 N</place></x:xmpmeta>')
      .toFormat(kind)
      .toBuffer();
    expect(given.includes('A camera')).toBe(true);
    const freed = withoutPlace(given);
    if (!freed) throw new Error('not understood');
    const told = await sharp(freed).metadata();
    expect(told.xmp).toBeUndefined();
    for (const word of ['A camera', '2026:05:01', '47.3667', 'xmpmeta'])
      expect(Buffer.from(freed).includes(word)).toBe(false);
    // GPSInfo is the pointer 0x8825 of TIFF's first directory: with 26 bytes of EXIF there is room for one entry only.
    expect((told.exif?.length ?? 0) <= 32).toBe(true);
    if (kind !== 'png')
      expect([(await sharp(given).metadata()).orientation, told.orientation]).toEqual([6, 6]);
    const pixels = (file: Uint8Array) => sharp(file).raw().toBuffer();
    expect((await pixels(freed)).equals(await pixels(given))).toBe(true);
  },
);

test('keeps the colour profile, and drops what follows the picture', async () => {
  const given = await picture().withMetadata({ icc: 'p3' }).jpeg({ progressive: true }).toBuffer();
  const freed = withoutPlace(Buffer.concat([given, Buffer.from('a film of the place')]));
  expect((await sharp(freed).metadata()).icc).toBeDefined();
  expect(Buffer.from(freed ?? []).includes('a film')).toBe(false);
});

test('leaves a file without any of it as it is, and tells what it does not understand', () => {
  const plain = readFileSync('fixtures/sound.jpg');
  expect(Buffer.from(withoutPlace(plain) ?? []).equals(plain)).toBe(true);
  expect(withoutPlace(plain.subarray(0, 400))).toBeUndefined();
  expect(withoutPlace(Buffer.from('a shopping list'))).toBeUndefined();
});
