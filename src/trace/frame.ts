import type { Point } from '../geometry/index.ts';

/** How a raster lies on the sheet. */
export interface Frame {
  width: number;
  height: number;
  pxPerMm: number;
  originMm: Point;
}

/** mm on the sheet of a place in pixels (pixel (i, j) covers [i, i+1) x [j, j+1)). */
export const toMm = ({ pxPerMm, originMm }: Frame, x: number, y: number): Point => [
  originMm[0] + x / pxPerMm,
  originMm[1] + y / pxPerMm,
];

/** Place in pixels of a place in mm. */
export const toPx = ({ pxPerMm, originMm }: Frame, [x, y]: Point): Point => [
  (x - originMm[0]) * pxPerMm,
  (y - originMm[1]) * pxPerMm,
];

/** Pixels of a box, all ends included: i0..i1, j0..j1. */
export interface PixelBox {
  i0: number;
  j0: number;
  i1: number;
  j1: number;
}

export const noPixels = (): PixelBox => ({ i0: Infinity, j0: Infinity, i1: -Infinity, j1: -Infinity });

export function includePixel(box: PixelBox, i: number, j: number): void {
  if (i < box.i0) box.i0 = i;
  if (i > box.i1) box.i1 = i;
  if (j < box.j0) box.j0 = j;
  if (j > box.j1) box.j1 = j;
}
