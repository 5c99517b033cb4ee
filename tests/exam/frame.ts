import type { Homography, Point, Quad } from '../../src/geometry/index.ts';
import {
  applyHomography,
  bent,
  distort,
  homographyFromQuad,
  invertHomography,
  lensOf,
  undistort,
} from '../../src/sheet/index.ts';
import type { Bow, SquaredSheet } from '../../src/sheet/index.ts';

/** A map between mm on the base and picture pixels, lens included. */
export interface Frame {
  toPx(mm: Point): Point;
  toMm(px: Point): Point;
}

type Size = { width: number; height: number };

/** The map by which a sheet was squared up, its bow included. */
export function frameOfSheet({ toPhoto, bow, baseMm }: SquaredSheet, photo: Size, k1: number): Frame {
  const flat = frameOf(toPhoto, photo, k1);
  if (!bow) return flat;
  return {
    toPx: (mm) => flat.toPx(bent(bow, baseMm, mm)),
    toMm: (px) => unbent(bow, baseMm, flat.toMm(px)),
  };
}

/** The place of the flat base that lies at a place of the bowed one: by fixed point, for a bow is small beside the base. */
function unbent(bow: Bow, base: Size, place: Point): Point {
  let flat = place;
  for (let n = 0; n < 4; n++) {
    const [x, y] = bent(bow, base, flat);
    flat = [flat[0] + place[0] - x, flat[1] + place[1] - y];
  }
  return flat;
}

function frameOf(toPhoto: Homography, photo: Size, k1: number): Frame {
  const lens = lensOf(photo, k1);
  const back = invertHomography(toPhoto);
  return {
    toPx: (mm) => distort(lens, applyHomography(toPhoto, mm)),
    toMm: (px) => applyHomography(back, undistort(lens, px)),
  };
}

export function frameFromCorners(
  corners: Quad,
  base: { width_mm: number; height_mm: number },
  photo: Size,
  k1: number,
): Frame {
  const lens = lensOf(photo, k1);
  const straight = corners.map((p) => undistort(lens, p)) as unknown as Quad;
  const size = { width: base.width_mm, height: base.height_mm };
  return frameOf(homographyFromQuad(straight, size), photo, k1);
}

/** Largest distance of the corners from the true ones, mm, over the turns that map the base onto itself. */
export function cornerError(
  found: Quad,
  truth: Frame,
  base: { width_mm: number; height_mm: number },
): { mm: number; turned: number } {
  const { width_mm: w, height_mm: h } = base;
  const should: Point[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const places = found.map((p) => truth.toMm(p));
  const turns = w === h ? [0, 1, 2, 3] : [0, 2];
  const errors = turns.map((t) => ({
    turned: 90 * t,
    mm: Math.max(
      ...places.map((p, i) => Math.hypot(p[0] - should[(i + t) % 4][0], p[1] - should[(i + t) % 4][1])),
    ),
  }));
  return errors.sort((a, b) => a.mm - b.mm)[0];
}
