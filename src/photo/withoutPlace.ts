import { orientationIn, orientationOnly } from './exifOrientation.ts';

/**
 * A photograph's file without what a camera writes beside the picture: place, time, device, previews, what follows
 * the picture. The pixels stay as they are; of EXIF only the orientation is left.
 * @param bytes a JPEG, PNG or WebP file
 * @returns the same bytes where there was nothing to take out; undefined where the file is of another kind or broken
 * @source JPEG: ITU-T T.81 annex B; PNG: ISO/IEC 15948 clause 5; WebP: RFC 9649; EXIF in them: CIPA DC-008
 */
export function withoutPlace(bytes: Uint8Array): Uint8Array | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return jpeg(bytes);
  if (ascii(bytes, 1, 3) === 'PNG') return png(bytes);
  if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') return webp(bytes);
  return undefined;
}

const ascii = (b: Uint8Array, at: number, length: number) =>
  String.fromCharCode(...b.subarray(at, at + length));
const view = (b: Uint8Array) => new DataView(b.buffer, b.byteOffset, b.byteLength);

function jpeg(b: Uint8Array): Uint8Array | undefined {
  const parts = [b.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= b.length && b[at] === 0xff) {
    const marker = b[at + 1];
    if (marker === 0xd9) return joined([...parts, b.subarray(at, at + 2)]);
    const end = at + 2 + view(b).getUint16(at + 2);
    if (end > b.length) return undefined;
    const segment = b.subarray(at, end);
    if (isExif(segment)) parts.push(...jpegOrientation(segment));
    else if (staysInJpeg(marker, segment)) parts.push(segment);
    at = end;
    if (marker !== 0xda) continue;
    const scan = endOfScan(b, at);
    parts.push(b.subarray(at, scan));
    at = scan;
  }
  return at + 2 <= b.length && b[at + 1] === 0xd9 ? joined([...parts, b.subarray(at, at + 2)]) : undefined;
}

/** Everything but notes of cameras and programs; APP0 is JFIF, APP2 may be the colour profile, APP14 how colours are coded. */
function staysInJpeg(marker: number, segment: Uint8Array): boolean {
  if (marker === 0xe2) return ascii(segment, 4, 11) === 'ICC_PROFILE';
  if (marker === 0xe0) return ascii(segment, 4, 4) === 'JFIF';
  return marker === 0xee || !((marker >= 0xe0 && marker <= 0xef) || marker === 0xfe);
}

function isExif(segment: Uint8Array): boolean {
  return segment[1] === 0xe1 && ascii(segment, 4, 4) === 'Exif';
}

function jpegOrientation(segment: Uint8Array): Uint8Array[] {
  const turn = orientationIn(segment.subarray(10));
  if (turn === undefined || turn === 1) return [];
  const exif = orientationOnly(turn);
  const head = new Uint8Array([0xff, 0xe1, 0, exif.length + 8, 0x45, 0x78, 0x69, 0x66, 0, 0]);
  return [head, exif];
}

/** Coded data goes on until a marker that is neither stuffing nor a restart. */
function endOfScan(b: Uint8Array, from: number): number {
  for (let at = from; at + 1 < b.length; at++) {
    if (b[at] !== 0xff) continue;
    const next = b[at + 1];
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return b.length;
}

const dropped = new Set(['eXIf', 'tEXt', 'zTXt', 'iTXt', 'tIME']);

function png(b: Uint8Array): Uint8Array | undefined {
  const parts = [b.subarray(0, 8)];
  for (let at = 8; at + 12 <= b.length;) {
    const end = at + 12 + view(b).getUint32(at);
    if (end > b.length) return undefined;
    const name = ascii(b, at + 4, 4);
    if (!dropped.has(name)) parts.push(b.subarray(at, end));
    if (name === 'IEND') return joined(parts);
    at = end;
  }
  return undefined;
}

function webp(b: Uint8Array): Uint8Array | undefined {
  const parts: Uint8Array[] = [b.slice(0, 12)];
  const end = Math.min(b.length, 8 + view(b).getUint32(4, true));
  let turn: number | undefined;
  for (let at = 12; at + 8 <= end;) {
    const length = view(b).getUint32(at + 4, true);
    const next = at + 8 + length + (length % 2);
    if (next > b.length) return undefined;
    const name = ascii(b, at, 4);
    if (name === 'EXIF') turn = orientationIn(exifWithin(b.subarray(at + 8, at + 8 + length)));
    else if (name !== 'XMP ') parts.push(b.slice(at, next));
    at = next;
  }
  const kept = turn !== undefined && turn !== 1 ? orientationOnly(turn) : undefined;
  const extended = parts.find((part) => ascii(part, 0, 4) === 'VP8X');
  // Flags of RFC 9649 section 2.7: EXIF 0x08, XMP 0x04.
  if (extended) extended[8] = (extended[8] & ~0x0c) | (kept ? 0x08 : 0);
  if (kept) parts.push(riffChunk('EXIF', kept));
  const file = joined(parts);
  view(file).setUint32(4, file.length - 8, true);
  return file;
}

/** Some programs write JPEG's head before EXIF in WebP too. */
function exifWithin(b: Uint8Array): Uint8Array {
  return ascii(b, 0, 4) === 'Exif' ? b.subarray(6) : b;
}

function riffChunk(name: string, content: Uint8Array): Uint8Array {
  const chunk = new Uint8Array(8 + content.length + (content.length % 2));
  chunk.set([...name].map((letter) => letter.charCodeAt(0)));
  view(chunk).setUint32(4, content.length, true);
  chunk.set(content, 8);
  return chunk;
}

function joined(parts: Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
