import type { Quad } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { applyHomography, homographyFromQuad, scaleAt } from './homography.ts';
import { distort, lensOf, undistort } from './lens.ts';
import { resample } from './resample.ts';
import type { SquaredSheet } from './types.ts';

export interface SquareUpOptions {
  /** Scale of the squared picture; 10 px/mm shows a 0.7 mm gap over 7 px. */
  pxPerMm?: number;
  /** Beyond the base on every side, for flaps that lie open beside it. */
  marginMm?: number;
  /** Radial distortion, as in `Outline`. */
  k1?: number;
}

/**
 * The base as seen from straight above, at constant scale, in its own frame.
 * @param cornersPx top-left, top-right, bottom-right, bottom-left of the base, upright picture px (pixel i covers [i, i+1))
 * @param baseMm size of the base
 */
export function squareUp(
  photo: Photo,
  cornersPx: Quad,
  baseMm: { width: number; height: number },
  { pxPerMm = 10, marginMm = 0, k1 = 0 }: SquareUpOptions = {},
): SquaredSheet {
  const lens = lensOf(photo, k1);
  const straight = cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  const toPhoto = homographyFromQuad(straight, baseMm);
  const width = Math.round((baseMm.width + 2 * marginMm) * pxPerMm);
  const height = Math.round((baseMm.height + 2 * marginMm) * pxPerMm);
  const originMm = [-marginMm, -marginMm] as const;
  const photoPxPerMm = Math.min(...baseCorners(baseMm).map((p) => scaleAt(toPhoto, p)));
  const frame = { width, height, pxPerMm, originMm };
  const { rgb, seen } = resample(
    photo,
    frame,
    (p) => distort(lens, applyHomography(toPhoto, p)),
    toPhoto,
    lens,
  );
  return { ...frame, baseMm, rgb, ...(seen ? { seen } : {}), toPhoto, photoPxPerMm };
}

const baseCorners = ({ width, height }: { width: number; height: number }) =>
  [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
