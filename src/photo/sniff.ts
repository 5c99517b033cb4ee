/** What a file's first bytes say: its kind and its stored size, before any decoding. */
export interface Sniffed {
  kind: 'jpeg' | 'png' | 'webp' | 'heic' | 'avif' | 'gif' | 'bmp' | 'tiff' | 'pdf';
  /** Stored size in pixels, before the EXIF orientation is applied; undefined when the header breaks off. */
  width?: number;
  height?: number;
}

const text = (b: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...b.subarray(at, at + length));

const view = (b: Uint8Array) => new DataView(b.buffer, b.byteOffset, b.byteLength);

/**
 * Kind and size of a picture file.
 * @param bytes the whole file, or at least its header (64 kB are enough but for JPEGs with large previews)
 * @returns undefined when it is no known picture kind
 * @source JPEG: ITU-T T.81 annex B; PNG: ISO/IEC 15948 clause 11.2.2; WebP: RFC 9649; HEIF boxes: ISO/IEC 23008-12
 */
export function sniff(bytes: Uint8Array): Sniffed | undefined {
  if (bytes.length < 12) return undefined;
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return { kind: 'jpeg', ...jpegSize(bytes) };
  if (bytes[0] === 0x89 && text(bytes, 1, 3) === 'PNG') return { kind: 'png', ...pngSize(bytes) };
  if (text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 4) === 'WEBP')
    return { kind: 'webp', ...webpSize(bytes) };
  if (text(bytes, 4, 4) === 'ftyp') return isoMedia(bytes);
  if (text(bytes, 0, 4) === 'GIF8') return { kind: 'gif' };
  if (text(bytes, 0, 2) === 'BM') return { kind: 'bmp' };
  if (text(bytes, 0, 4) === 'II*\0' || text(bytes, 0, 4) === 'MM\0*') return { kind: 'tiff' };
  if (text(bytes, 0, 4) === '%PDF') return { kind: 'pdf' };
  return undefined;
}

type Size = Pick<Sniffed, 'width' | 'height'>;

/** Walks the marker segments up to the frame header (SOF0..SOF15 without DHT, JPG, DAC). */
function jpegSize(b: Uint8Array): Size {
  const v = view(b);
  let at = 2;
  while (at + 9 < b.length) {
    if (b[at] !== 0xff) return {};
    const marker = b[at + 1];
    if (marker === 0xff) {
      at++;
      continue;
    }
    const frame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (frame) return { height: v.getUint16(at + 5), width: v.getUint16(at + 7) };
    at += 2 + v.getUint16(at + 2);
  }
  return {};
}

function pngSize(b: Uint8Array): Size {
  if (b.length < 24) return {};
  return { width: view(b).getUint32(16), height: view(b).getUint32(20) };
}

function webpSize(b: Uint8Array): Size {
  if (b.length < 30) return {};
  const v = view(b);
  const chunk = text(b, 12, 4);
  if (chunk === 'VP8 ')
    return { width: v.getUint16(26, true) & 0x3fff, height: v.getUint16(28, true) & 0x3fff };
  if (chunk === 'VP8L') {
    const bits = v.getUint32(21, true);
    return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
  }
  if (chunk !== 'VP8X') return {};
  const uint24 = (at: number) => b[at] | (b[at + 1] << 8) | (b[at + 2] << 16);
  return { width: uint24(24) + 1, height: uint24(27) + 1 };
}

/** HEIC and AVIF share the box layout; the largest `ispe` box gives the picture's size. */
function isoMedia(b: Uint8Array): Sniffed | undefined {
  const brand = text(b, 8, 4);
  const kind = brand === 'avif' || brand === 'avis' ? 'avif' : heicBrands.has(brand) ? 'heic' : undefined;
  if (!kind) return undefined;
  let best: Size = {};
  const end = Math.min(b.length - 16, 1 << 16);
  for (let i = 12; i < end; i++) {
    if (b[i] !== 0x69 || text(b, i, 4) !== 'ispe') continue;
    const width = view(b).getUint32(i + 8);
    const height = view(b).getUint32(i + 12);
    if (width * height > (best.width ?? 0) * (best.height ?? 0)) best = { width, height };
  }
  return { kind, ...best };
}

const heicBrands = new Set(['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1']);
