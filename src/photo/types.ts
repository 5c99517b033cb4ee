/** An upright photograph in memory: EXIF orientation is already applied. */
export interface Photo {
  name: string;
  width: number;
  height: number;
  /** Row-major RGBA, 8 bits, width*height*4, sRGB (IEC 61966-2-1). */
  rgba: Uint8Array | Uint8ClampedArray;
}
