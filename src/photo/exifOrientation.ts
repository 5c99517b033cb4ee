const orientationTag = 0x0112;
const shortType = 3;

/**
 * The orientation that EXIF gives, 1..8.
 * @param exif from its TIFF header on
 * @source TIFF 6.0 sections 2 and 8, which EXIF (CIPA DC-008) is written in
 */
export function orientationIn(exif: Uint8Array): number | undefined {
  if (exif.length < 14) return undefined;
  const view = new DataView(exif.buffer, exif.byteOffset, exif.byteLength);
  const little = exif[0] === 0x49;
  const first = view.getUint32(4, little);
  if (first + 2 > exif.length) return undefined;
  const count = view.getUint16(first, little);
  for (let at = first + 2; at + 12 <= Math.min(exif.length, first + 2 + 12 * count); at += 12) {
    if (view.getUint16(at, little) !== orientationTag) continue;
    const value = view.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? value : undefined;
  }
  return undefined;
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
