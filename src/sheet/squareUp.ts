import type { Quad } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { bendAt, bent } from './bow.ts';
import type { Bow } from './bow.ts';
import { applyHomography, homographyFromQuad, scaleAt } from './homography.ts';
import { distort, lensOf, undistort } from './lens.ts';
import { resample } from './resample.ts';
import type { Bends } from './resample.ts';
import type { SquaredSheet } from './types.ts';

export interface SquareUpOptions {
  /** Scale of the squared picture; 10 px/mm shows a 0.7 mm gap over 7 px. */
  pxPerMm?: number;
  /** Beyond the base on every side, for flaps that lie open beside it. */
  marginMm?: number;
  /** Radial distortion, as in `Outline`. */
  k1?: number;
  /** How the sides bow, as in `Outline`. */
  bow?: Bow;
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
  { pxPerMm = 10, marginMm = 0, k1 = 0, bow }: SquareUpOptions = {},
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
    (p) => distort(lens, applyHomography(toPhoto, bow ? bent(bow, baseMm, p) : p)),
    { m: toPhoto, lens, bend: bow && bendsOver(frame, baseMm, bow) },
  );
  return {
    ...frame,
    baseMm,
    rgb,
    ...(seen ? { seen } : {}),
    toPhoto,
    ...(bow ? { bow } : {}),
    photoPxPerMm,
  };
}

/** The bow of each column and row of the squared picture, so that its inner loop has only to blend them. */
function bendsOver(
  { width, height, pxPerMm, originMm }: Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm' | 'originMm'>,
  baseMm: { width: number; height: number },
  { top, right, bottom, left }: Bow,
): Bends {
  const shares = (count: number, from: number, length: number) =>
    Float64Array.from({ length: count }, (_, n) =>
      Math.min(1, Math.max(0, (from + (n + 0.5) / pxPerMm) / length)),
    );
  const u = shares(width, originMm[0], baseMm.width);
  const v = shares(height, originMm[1], baseMm.height);
  return {
    u,
    v,
    top: u.map((t) => bendAt(top, t)),
    bottom: u.map((t) => bendAt(bottom, t)),
    left: v.map((t) => bendAt(left, t)),
    right: v.map((t) => bendAt(right, t)),
  };
}

const baseCorners = ({ width, height }: { width: number; height: number }) =>
  [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
