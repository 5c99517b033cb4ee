import { cv } from 'opencv-wasm';

/** A mask as an 8-bit OpenCV matrix, 255 = inside. */
export function matOf(mask: Uint8Array, width: number, height: number) {
  const mat = new cv.Mat(height, width, cv.CV_8UC1);
  mat.data.set(mask.map((m) => (m ? 255 : 0)));
  return mat;
}

export { cv };
