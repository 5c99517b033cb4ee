/** A picture in memory, row-major, 3 bytes a pixel. */
export interface RgbPicture {
  width: number;
  height: number;
  rgb: Uint8Array;
}

/**
 * A window of a picture as a net takes it: three planes of 0..1, channel-major. Beyond the picture its edge is repeated.
 * @param window px; its left and top lie in the picture
 */
export function planesOf(
  { width, height, rgb }: RgbPicture,
  window: { x: number; y: number; width: number; height: number },
): Float32Array {
  const area = window.width * window.height;
  const planes = new Float32Array(3 * area);
  let k = 0;
  for (let j = 0; j < window.height; j++) {
    const row = Math.min(height - 1, window.y + j) * width;
    for (let i = 0; i < window.width; i++, k++) {
      const p = (row + Math.min(width - 1, window.x + i)) * 3;
      planes[k] = rgb[p] / 255;
      planes[k + area] = rgb[p + 1] / 255;
      planes[k + 2 * area] = rgb[p + 2] / 255;
    }
  }
  return planes;
}
