import { exifField, isLittle } from './exifField.ts';

const orientationTag = 0x0112;
const shortType = 3;

/**
 * The orientation that EXIF gives, 1..8.
 * @param exif from its TIFF header on
 * @source TIFF 6.0 sections 2 and 8, which EXIF (CIPA DC-008) is written in
 */
export function orientationIn(exif: Uint8Array): number | undefined {
  const field = exifField(exif, orientationTag);
  if (!field) return undefined;
  const value = new DataView(exif.buffer, exif.byteOffset, exif.byteLength).getUint16(
    field.at,
    isLittle(exif),
  );
  return value >= 1 && value <= 8 ? value : undefined;
}

/** EXIF that says nothing but the orientation. */
export function orientationOnly(orientation: number): Uint8Array {
  const exif = new Uint8Array(26);
  const view = new DataView(exif.buffer);
  exif.set([0x49, 0x49, 42, 0]);
  view.setUint32(4, 8, true);
  view.setUint16(8, 1, true);
  view.setUint16(10, orientationTag, true);
  view.setUint16(12, shortType, true);
  view.setUint32(14, 1, true);
  view.setUint16(18, orientation, true);
  return exif;
}
