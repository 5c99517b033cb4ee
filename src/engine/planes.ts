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
  const inside = Math.min(window.width, width - window.x);
  for (let j = 0; j < window.height; j++) {
    const start = Math.min(height - 1, window.y + j) * width + window.x;
    const k = j * window.width;
    for (let i = 0, p = 3 * start; i < inside; i++, p += 3) {
      planes[k + i] = share[rgb[p]];
      planes[k + i + area] = share[rgb[p + 1]];
      planes[k + i + 2 * area] = share[rgb[p + 2]];
    }
    for (let plane = k; plane < 3 * area; plane += area)
      planes.fill(planes[plane + inside - 1], plane + inside, plane + window.width);
  }
  return planes;
}

const share = Float32Array.from({ length: 256 }, (_, v) => v / 255);
