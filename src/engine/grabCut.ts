import type { Cv } from './openCvSource.ts';
import { withMats } from './withMats.ts';

/** What is known of a pixel beforehand. The values are OpenCV's. */
export const grabCutHint = {
  background: 0,
  foreground: 1,
  probablyBackground: 2,
  probablyForeground: 3,
} as const;

/**
 * Divides a picture into object and ground by colour mixtures and a graph cut.
 * @param rgb row-major, 3 bytes a pixel
 * @param hints one `grabCutHint` a pixel
 * @returns 1 = object, width*height
 * @source C. Rother, V. Kolmogorov, A. Blake, GrabCut, SIGGRAPH 2004, as OpenCV implements it
 */
export function grabCut(
  cv: Cv,
  rgb: Uint8Array,
  width: number,
  height: number,
  hints: Uint8Array,
  rounds: number,
): Uint8Array {
  return withMats((own) => {
    const image = own(new cv.Mat(height, width, cv.CV_8UC3));
    image.data.set(rgb);
    const mask = own(new cv.Mat(height, width, cv.CV_8UC1));
    mask.data.set(hints);
    const ground = own(new cv.Mat());
    const object = own(new cv.Mat());
    cv.grabCut(image, mask, new cv.Rect(0, 0, width, height), ground, object, rounds, cv.GC_INIT_WITH_MASK);
    return Uint8Array.from(mask.data, (v) => v & 1);
  });
}
