import type { Point } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { applyHomography, distort, homographyFromQuad, lensOf, undistort } from '../sheet/index.ts';
import type { Outline } from '../sheet/index.ts';
import type { Quad } from '../geometry/index.ts';

export type Colour = readonly [red: number, green: number, blue: number];

/** Each colour is a mean over a square of this many samples a side, this far apart, mm. */
const side = 3;
const apartMm = 0.5;

/**
 * Reads the photograph's colour at places of the base, mm, without squaring it up.
 * @returns levels, the mean over about 1.5 mm; undefined where the photograph does not reach
 */
export function colourOn(
  photo: Photo,
  { cornersPx, k1 }: Outline,
  baseMm: { width: number; height: number },
): (at: Point) => Colour | undefined {
  const lens = lensOf(photo, k1);
  const straight = cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  const toPhoto = homographyFromQuad(straight, baseMm);
  return ([x, y]) => {
    const sum: [number, number, number] = [0, 0, 0];
    for (let n = 0; n < side * side; n++) {
      const dx = ((n % side) - (side - 1) / 2) * apartMm;
      const dy = (Math.floor(n / side) - (side - 1) / 2) * apartMm;
      const [px, py] = distort(lens, applyHomography(toPhoto, [x + dx, y + dy])).map(Math.floor);
      if (px < 0 || py < 0 || px >= photo.width || py >= photo.height) return undefined;
      for (let c = 0; c < 3; c++) sum[c] += photo.rgba[(py * photo.width + px) * 4 + c] / (side * side);
    }
    return sum;
  };
}
