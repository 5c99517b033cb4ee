/**
 * A smooth displacement over a picture, as a sheet that is not quite flat takes when it is seen from elsewhere: for each
 * direction a polynomial of third degree.
 */
export interface SmoothMove {
  /** Size of the picture, px; x and y run from -1 to 1 over it. */
  width: number;
  height: number;
  /** Coefficients of `terms` for the displacement to the right and down, px. */
  right: Float64Array;
  down: Float64Array;
}

export const termCount = 10;
/** From this term on they are of third degree. */
export const firstCubic = 6;

/** 1, x, y, x^2, xy, y^2, x^3, x^2 y, x y^2, y^3. */
export function terms(x: number, y: number, into: Float64Array): void {
  into[0] = 1;
  into[1] = x;
  into[2] = y;
  into[3] = x * x;
  into[4] = x * y;
  into[5] = y * y;
  into[6] = x * x * x;
  into[7] = x * x * y;
  into[8] = x * y * y;
  into[9] = y * y * y;
}

export function still(width: number, height: number): SmoothMove {
  return { width, height, right: new Float64Array(termCount), down: new Float64Array(termCount) };
}

/** The same displacement over the picture at another size. */
export function resized({ right, down, width }: SmoothMove, toWidth: number, toHeight: number): SmoothMove {
  const by = (coefficients: Float64Array): Float64Array => coefficients.map((v) => (v * toWidth) / width);
  return { width: toWidth, height: toHeight, right: by(right), down: by(down) };
}

/** Displacement at pixel (i, j), px, into `to`. */
export function moveAt(move: SmoothMove, i: number, j: number, to: Float64Array): void {
  const x = (2 * i + 1) / move.width - 1;
  const y = (2 * j + 1) / move.height - 1;
  to[0] = along(move.right, x, y);
  to[1] = along(move.down, x, y);
}

function along(c: Float64Array, x: number, y: number): number {
  const cubic = x * x * (x * c[6] + y * c[7]) + y * y * (x * c[8] + y * c[9]);
  return c[0] + x * (c[1] + x * c[3] + y * c[4]) + y * (c[2] + y * c[5]) + cubic;
}

/** The greatest displacement over the picture, px, at a net of nine by nine places. */
export function farthest(move: SmoothMove): number {
  const at = new Float64Array(2);
  let most = 0;
  for (let n = 0; n < 81; n++) {
    moveAt(move, ((n % 9) / 8) * (move.width - 1), (Math.floor(n / 9) / 8) * (move.height - 1), at);
    most = Math.max(most, Math.hypot(at[0], at[1]));
  }
  return most;
}
