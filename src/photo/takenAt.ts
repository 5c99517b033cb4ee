import { exifField, longOf } from './exifField.ts';

/** EXIF's own directory, and in it the time of the exposure; time of the last change in the first directory. */
const tags = { exif: 0x8769, original: 0x9003, changed: 0x0132 };

/**
 * When a JPEG was taken, by its camera's clock.
 * @param bytes the file, or its first 128 kB
 * @returns "2026-05-03T14:20:07", a time without a zone; undefined where the file does not tell
 * @source EXIF: CIPA DC-008 4.6.5; JPEG segments: ITU-T T.81 annex B
 */
export function takenAt(bytes: Uint8Array): string | undefined {
  const exif = exifOf(bytes);
  if (!exif) return undefined;
  const directory = exifField(exif, tags.exif);
  const original = directory && exifField(exif, tags.original, longOf(exif, directory));
  const field = original ?? exifField(exif, tags.changed);
  if (!field || field.type !== 2 || field.count !== 20) return undefined;
  const from = longOf(exif, field);
  const text = String.fromCharCode(...exif.subarray(from, from + 19));
  const [, y, mo, d, time] = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)$/.exec(text) ?? [];
  return time === undefined || Number.isNaN(Date.parse(`${y}-${mo}-${d}T${time}`))
    ? undefined
    : `${y}-${mo}-${d}T${time}`;
}

/** What follows "Exif" and two zeros in a JPEG's APP1. */
function exifOf(b: Uint8Array): Uint8Array | undefined {
  if (b[0] !== 0xff || b[1] !== 0xd8) return undefined;
  for (let at = 2; at + 10 <= b.length && b[at] === 0xff && b[at + 1] !== 0xda;) {
    const end = at + 2 + 256 * b[at + 2] + b[at + 3];
    const isExif = b[at + 1] === 0xe1 && String.fromCharCode(...b.subarray(at + 4, at + 8)) === 'Exif';
    if (isExif) return b.subarray(at + 10, Math.min(end, b.length));
    at = end;
  }
  return undefined;
}
