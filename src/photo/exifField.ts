/** Where a field's value lies: its own four bytes, or what they point to. */
export interface ExifField {
  /** TIFF type: 2 text, 3 short, 4 long. */
  type: number;
  count: number;
  /** Byte of the four that hold the value, or its place. */
  at: number;
}

/** Whether the bytes are in little-endian order. */
export const isLittle = (exif: Uint8Array) => exif[0] === 0x49;

/**
 * One field of a directory.
 * @param exif from its TIFF header on
 * @param directory byte at which the directory begins; the first one unless given
 * @source TIFF 6.0 section 2, which EXIF (CIPA DC-008) is written in
 */
export function exifField(exif: Uint8Array, tag: number, directory?: number): ExifField | undefined {
  if (exif.length < 14) return undefined;
  const view = new DataView(exif.buffer, exif.byteOffset, exif.byteLength);
  const little = isLittle(exif);
  const first = directory ?? view.getUint32(4, little);
  if (first + 2 > exif.length) return undefined;
  const count = view.getUint16(first, little);
  for (let at = first + 2; at + 12 <= Math.min(exif.length, first + 2 + 12 * count); at += 12) {
    if (view.getUint16(at, little) !== tag) continue;
    return { type: view.getUint16(at + 2, little), count: view.getUint32(at + 4, little), at: at + 8 };
  }
  return undefined;
}

/** A field's long, or the place that it points to. */
export function longOf(exif: Uint8Array, { at }: ExifField): number {
  return new DataView(exif.buffer, exif.byteOffset, exif.byteLength).getUint32(at, isLittle(exif));
}
