import type { Quad } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { bowOf, mostBow } from './bow.ts';
import { distort, lensOf, undistort } from './lens.ts';
import { lookAcross } from './outline/profiles.ts';
import type { Outline } from './types.ts';

/** Sides are looked for this far off the straight line, mm: a curl that strays farther wants flattening. */
const reachMm = 3;
const profiles = 140;

/**
 * The outline with the bow of its sides, where the photograph shows that the sheet is not flat.
 * @param keepCorners where the maker laid them by hand
 * @returns the outline itself where the sides are straight
 */
export function seeBow(
  photo: Photo,
  outline: Outline,
  base: { width: number; height: number },
  keepCorners = false,
): Outline {
  const lens = lensOf(photo, outline.k1);
  const straight = outline.cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  const around = straight.reduce((s, [x, y], i) => {
    const [nx, ny] = straight[(i + 1) % 4];
    return s + Math.hypot(nx - x, ny - y);
  }, 0);
  const pxPerMm = around / (2 * (base.width + base.height));
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  const plan = { count: profiles, reach: Math.ceil(reachMm * pxPerMm), depth };
  const sides = [0, 1, 2, 3].map((side) =>
    lookAcross(photo, outline.cornersPx, side, lens, plan).map(({ at }) => undistort(lens, at)),
  );
  const found = bowOf(straight, sides, base, keepCorners);
  if (!found) return outline;
  return {
    ...outline,
    cornersPx: found.cornersPx.map((p) => distort(lens, p)) as unknown as Quad,
    bow: found.bow,
    residualMm: Math.max(outline.residualMm, mostBow(found.bow)),
  };
}
