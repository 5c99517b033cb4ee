import sharp from 'sharp';
import { expect, test } from 'vitest';
import { takenAt } from '../../src/photo/takenAt.ts';

/** EXIF as libexif writes it, by way of sharp: one from outside to check against. */
const plain = sharp({ create: { width: 64, height: 48, channels: 3, background: '#ccbbaa' } });
const jpegWith = (exif: Record<string, Record<string, string>>) =>
  plain.clone().withExif(exif).jpeg().toBuffer();

test('the time of the exposure is read from a JPEG, else that of its last change', async () => {
  const both = {
    IFD0: { DateTime: '2026:05:09 08:00:00' },
    IFD2: { DateTimeOriginal: '2026:05:03 14:20:07' },
  };
  expect(takenAt(await jpegWith(both))).toBe('2026-05-03T14:20:07');
  expect(takenAt(await jpegWith({ IFD0: { DateTime: '2026:05:09 08:00:00' } }))).toBe('2026-05-09T08:00:00');
});

test('a file that does not tell, is cut off or tells nonsense has no time', async () => {
  expect(takenAt(await plain.clone().jpeg().toBuffer())).toBeUndefined();
  expect(takenAt(await plain.clone().png().toBuffer())).toBeUndefined();
  const whole = await jpegWith({ IFD0: { DateTime: '2026:05:09 08:00:00' } });
  for (let length = 0; length < whole.length; length += 7)
    expect([undefined, '2026-05-09T08:00:00']).toContain(takenAt(whole.subarray(0, length)));
  expect(takenAt(whole.subarray(0, 60))).toBeUndefined();
  expect(takenAt(await jpegWith({ IFD0: { DateTime: '2026:15:39 08:00:00' } }))).toBeUndefined();
});
