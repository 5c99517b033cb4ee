import { components } from '../copper/index.ts';
import { includePixel, noPixels, type PixelBox } from './frame.ts';

/** Pieces of a mask. Copper is 4-connected, paper 8-connected: two strips that touch by one pixel's corner stay apart. */
export interface Labelled {
  /** Piece of each pixel, 1..n in the order of their first pixel, 0 = none; row-major. */
  labels: Int32Array;
  /** Box and pixels of piece id at [id - 1]. */
  boxes: PixelBox[];
  areas: number[];
}

/** @param least pieces of fewer pixels are no copper that anybody laid; they get 0 */
export function labelPieces(mask: Uint8Array, width: number, height: number, least: number): Labelled {
  const { labels, count } = components(mask, width, height, 4);
  const sizes = new Int32Array(count + 1);
  const boxes = Array.from({ length: count + 1 }, noPixels);
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const id = labels[k];
      if (!id) continue;
      sizes[id]++;
      includePixel(boxes[id], i, j);
    }
  }
  const kept = new Int32Array(count + 1);
  let n = 0;
  for (let id = 1; id <= count; id++) kept[id] = sizes[id] >= least ? ++n : 0;
  if (n < count) for (let k = 0; k < labels.length; k++) labels[k] = kept[labels[k]];
  const has = (_: unknown, id: number): boolean => kept[id] > 0;
  return { labels, boxes: boxes.filter(has), areas: [...sizes].filter(has) };
}
