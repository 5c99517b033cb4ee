import { rootOf } from '../copper/index.ts';
import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { toPx, type Frame } from './frame.ts';
import { resample, tangent } from './polyline.ts';

/**
 * A strip straightened along its centre-line, one sample a pixel: row s runs along the line, column t across it, the
 * middle column on the line itself.
 */
export interface Ribbon {
  /** Samples along the line. */
  length: number;
  /** Samples across, odd. */
  across: number;
  /** Place of each row's middle, px, and the unit normal of its columns. */
  centre: Point[];
  normal: Point[];
  /** L*, a*, b*, row-major [s * across + t]. */
  L: Float32Array;
  a: Float32Array;
  b: Float32Array;
  /** Piece at each sample, 0 = paper, -1 = off the sheet. */
  piece: Int32Array;
}

/** Half the span, mm, over which a row's direction is taken. */
const span = 1;

/**
 * @param path centre-line, mm
 * @param halfMm how far the columns reach on both sides
 */
export function straighten(
  path: readonly Point[],
  halfMm: number,
  sheet: SquaredSheet,
  labels: Int32Array,
  frame: Frame,
): Ribbon {
  const centre = resample(
    path.map((p) => toPx(frame, p)),
    1,
  );
  const half = Math.round(halfMm * frame.pxPerMm);
  const across = 2 * half + 1;
  const length = centre.length;
  const [L, a, b] = [0, 1, 2].map(() => new Float32Array(length * across));
  const root = new Float32Array(3);
  const piece = new Int32Array(length * across);
  const reach = Math.round(span * frame.pxPerMm);
  const normal = centre.map((_, s): Point => {
    const [tx, ty] = tangent(centre, s, reach);
    return [-ty, tx];
  });
  for (let s = 0, n = 0; s < length; s++) {
    const [nx, ny] = normal[s];
    for (let t = -half; t <= half; t++, n++) {
      const i = Math.floor(centre[s][0] + t * nx);
      const j = Math.floor(centre[s][1] + t * ny);
      if (i < 0 || j < 0 || i >= frame.width || j >= frame.height) {
        piece[n] = -1;
        continue;
      }
      const k = j * frame.width + i;
      piece[n] = labels[k];
      rootOf(sheet.rgb, 3 * k, root);
      L[n] = 116 * root[1] - 16;
      a[n] = 500 * (root[0] - root[1]);
      b[n] = 200 * (root[1] - root[2]);
    }
  }
  return { length, across, centre, normal, L, a, b, piece };
}
