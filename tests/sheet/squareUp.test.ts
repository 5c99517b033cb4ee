import { describe, expect, it } from 'vitest';
import type { Quad } from '../../src/geometry/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import {
  applyHomography,
  distort,
  homographyFromQuad,
  invertHomography,
  lensOf,
  squareUp,
  undistort,
} from '../../src/sheet/index.ts';

const base = { width: 60, height: 40 };
const quad: Quad = [
  [100, 80],
  [700, 120],
  [660, 520],
  [60, 470],
];

/** A photograph of a smooth pattern that is known in mm, so that every squared pixel has a true value. */
function patternPhoto(width: number, height: number, corners: Quad, k1 = 0): Photo {
  const lens = lensOf({ width, height }, k1);
  const straight = corners.map((p) => undistort(lens, p)) as unknown as Quad;
  const toMm = invertHomography(homographyFromQuad(straight, base));
  const rgba = new Uint8Array(width * height * 4);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p += 4) {
      const mm = applyHomography(toMm, undistort(lens, [x + 0.5, y + 0.5]));
      for (let c = 0; c < 3; c++) rgba[p + c] = pattern(mm[0], mm[1], c);
      rgba[p + 3] = 255;
    }
  }
  return { name: 'pattern', width, height, rgba };
}

const pattern = (x: number, y: number, c: number) =>
  Math.round(128 + 60 * Math.sin((0.35 + 0.05 * c) * x) + 50 * Math.cos(0.3 * y + c));

function meanError(sheet: ReturnType<typeof squareUp>): number {
  let sum = 0;
  let n = 0;
  for (let j = 0; j < sheet.height; j++) {
    for (let i = 0; i < sheet.width; i++, n++) {
      const x = sheet.originMm[0] + (i + 0.5) / sheet.pxPerMm;
      const y = sheet.originMm[1] + (j + 0.5) / sheet.pxPerMm;
      sum += Math.abs(sheet.rgb[(j * sheet.width + i) * 3] - pattern(x, y, 0));
    }
  }
  return sum / n;
}

describe('squareUp', () => {
  it('puts every place of the base where its frame says, to less than a grey level', () => {
    const sheet = squareUp(patternPhoto(800, 600, quad), quad, base);
    expect([sheet.width, sheet.height]).toEqual([600, 400]);
    expect(sheet.seen).toBeUndefined();
    expect(meanError(sheet)).toBeLessThan(0.8);
  });

  it('does so with a margin, through a lens that bows, and from a larger photograph', () => {
    expect(meanError(squareUp(patternPhoto(800, 600, quad), quad, base, { marginMm: 3 }))).toBeLessThan(0.8);
    const bowed = squareUp(patternPhoto(800, 600, quad, -0.04), quad, base, { k1: -0.04 });
    expect(meanError(bowed)).toBeLessThan(0.8);
    const ignored = squareUp(patternPhoto(800, 600, quad, -0.04), quad, base);
    expect(meanError(ignored)).toBeGreaterThan(1.2);
    const large = quad.map(([x, y]) => [x * 3, y * 3]) as unknown as Quad;
    expect(meanError(squareUp(patternPhoto(2400, 1800, large), large, base, { pxPerMm: 8 }))).toBeLessThan(
      0.8,
    );
  });

  it('averages what is finer than its pixels instead of aliasing it', () => {
    const width = 1600;
    const rgba = new Uint8Array(width * width * 4).fill(255);
    for (let p = 0, i = 0; p < rgba.length; p += 4, i++) rgba.fill((i % 2) * 255, p, p + 3);
    const whole: Quad = [
      [0, 0],
      [width, 0],
      [width, width],
      [0, width],
    ];
    const sheet = squareUp({ name: 'lines', width, height: width, rgba }, whole, { width: 40, height: 40 });
    let worst = 0;
    for (let i = 0; i < sheet.rgb.length; i++) worst = Math.max(worst, Math.abs(sheet.rgb[i] - 127.5));
    expect(worst).toBeLessThan(3);
  });

  it('marks what the photograph does not show', () => {
    const sheet = squareUp(patternPhoto(800, 600, quad), quad, base, { marginMm: 20 });
    expect(sheet.seen?.[0]).toBe(0);
    expect(sheet.seen?.[(sheet.height >> 1) * sheet.width + (sheet.width >> 1)]).toBe(1);
  });

  it('tells the least resolution on the base', () => {
    const sheet = squareUp(patternPhoto(800, 600, quad), quad, base);
    expect(sheet.photoPxPerMm).toBeGreaterThan(9);
    expect(sheet.photoPxPerMm).toBeLessThan(10.1);
  });
});

describe('undistort', () => {
  it('undoes distort over the whole picture', () => {
    for (const k1 of [-0.06, -0.02, 0.03, 0.06]) {
      const lens = lensOf({ width: 2016, height: 1512 }, k1);
      const [x, y] = undistort(lens, distort(lens, [30, 1400]));
      expect(Math.hypot(x - 30, y - 1400)).toBeLessThan(0.01);
    }
  });
});
