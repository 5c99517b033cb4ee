/** A two-valued picture. `on` is row-major, 1 = conductor, width*height. */
export interface Bitmap {
  width: number;
  height: number;
  on: Uint8Array;
}

/** A box of whole pixels; x1 and y1 are the first pixel beyond it. */
export interface PixelBox {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** Grows a box by `by` pixels a side, kept inside width x height. */
export function grown(box: PixelBox, by: number, width: number, height: number): PixelBox {
  return {
    x0: Math.max(0, box.x0 - by),
    y0: Math.max(0, box.y0 - by),
    x1: Math.min(width, box.x1 + by),
    y1: Math.min(height, box.y1 + by),
  };
}

/** True where two boxes share a pixel or come within `slack` of it. */
export function boxesMeet(a: PixelBox, b: PixelBox, slack: number): boolean {
  return a.x0 - slack < b.x1 && b.x0 - slack < a.x1 && a.y0 - slack < b.y1 && b.y0 - slack < a.y1;
}
