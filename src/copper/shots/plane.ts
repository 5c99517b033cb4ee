/** A plane of values 0..1, row-major. */
export interface Plane {
  width: number;
  height: number;
  values: Float32Array;
}

/** Bilinear value at (x, y), px, which must lie a pixel within the plane's far borders. */
export function valueAt({ width, values }: Plane, x: number, y: number): number {
  const u = Math.floor(x);
  const v = Math.floor(y);
  const k = v * width + u;
  const top = values[k] + (values[k + 1] - values[k]) * (x - u);
  const low = values[k + width] + (values[k + width + 1] - values[k + width]) * (x - u);
  return top + (low - top) * (y - v);
}

/** The same anywhere: past a border the nearest value counts. */
export function valueWithin(plane: Plane, x: number, y: number): number {
  const within = (v: number, size: number): number => Math.min(size - 1.001, Math.max(0, v));
  return valueAt(plane, within(x, plane.width), within(y, plane.height));
}
