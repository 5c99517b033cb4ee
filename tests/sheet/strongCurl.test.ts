import { describe, expect, it } from 'vitest';
import { randomFrom } from '../generate/random.ts';
import type { Quad } from '../../src/geometry/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import { fitSides } from '../../src/sheet/outline/fitSides.ts';
import { followBow } from '../../src/sheet/outline/followBow.ts';
import { cornerErrorMm } from './cornerErrorMm.ts';

const pxPerMm = 7;
const base = { width: 105, height: 74 };
const [left, top] = [100, 100];
const [right, bottom] = [left + base.width * pxPerMm, top + base.height * pxPerMm];
const corners: Quad = [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/**
 * Pale paper on a dark table whose right side sags inwards by up to so many mm, as seen from above where two corners curl up;
 * a dark strip runs along that side, 9 mm in.
 */
function curled(sagMm: number): Photo {
  const [width, height] = [right + 100, bottom + 100];
  const rgba = new Uint8Array(width * height * 4).fill(255);
  const grain = randomFrom(7);
  for (let y = 0; y < height; y++) {
    const t = Math.min(1, Math.max(0, (y + 0.5 - top) / (bottom - top)));
    const edge = right - 4 * sagMm * pxPerMm * t * (1 - t);
    for (let x = 0; x < width; x++) {
      const paper = x >= left && x < edge && y >= top && y < bottom;
      const strip = paper && x > edge - 13 * pxPerMm && x < edge - 9 * pxPerMm;
      rgba.fill(
        (strip ? 60 : paper ? 215 : 90) + grain.between(-20, 20),
        4 * (y * width + x),
        4 * (y * width + x) + 3,
      );
    }
  }
  return { name: 'curled', width, height, rgba };
}

describe('followBow', () => {
  it.each([
    ['upper', 0],
    ['lower', 1],
  ])('finds the corner of a strong curl of which the straight side follows the %s half', (_, seen) => {
    const photo = curled(2.75);
    const inward = (mm: number) => right - mm * pxPerMm;
    const [upper, lower] = seen === 0 ? [0.3, 5.5] : [5.5, 0.3];
    const begun: Quad = [corners[0], [inward(upper), top], [inward(lower), bottom], corners[3]];
    const straight = fitSides(photo, begun, 8, pxPerMm)!;
    expect(cornerErrorMm(straight.cornersPx, corners, base)).toBeGreaterThan(2);
    const { fit } = followBow(photo, straight, base, pxPerMm);
    expect(cornerErrorMm(fit.cornersPx, corners, base)).toBeLessThan(0.5);
  });
});
