import { describe, expect, it } from 'vitest';
import type { Point, Quad } from '../../src/geometry/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import {
  applyHomography,
  bent,
  bowOf,
  homographyFromQuad,
  invertHomography,
  seeBow,
  squareUp,
} from '../../src/sheet/index.ts';
import type { Bow, SquaredSheet } from '../../src/sheet/index.ts';
import { turnBow } from '../../src/sheet/bow.ts';
import { randomFrom } from '../generate/random.ts';

const base = { width: 105, height: 148 };

/**
 * A pinhole camera some 350 mm over a sheet that is bent about an axis parallel to its height, on a cylinder of known
 * radius (mm; Infinity is flat): arc length on the sheet is kept, which is what paper does.
 */
function camera(radius: number) {
  const tilt = (18 * Math.PI) / 180;
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  return ([x, y]: Point): Point => {
    const arc = x - base.width / 2;
    const half = base.width / 2 / radius;
    const flat = radius === Infinity;
    const across = flat ? arc : radius * Math.sin(arc / radius);
    const lift = flat ? 0 : radius * (Math.cos(arc / radius) - Math.cos(half));
    const down = y - base.height / 2;
    const depth = 350 + s * down - c * lift;
    return [2000 + (3200 * across) / depth, 1500 + (3200 * (c * down + s * lift)) / depth];
  };
}

const corners = ({ width: w, height: h }: typeof base): Point[] => [
  [0, 0],
  [w, 0],
  [w, h],
  [0, h],
];

function edgePoints(toPx: (p: Point) => Point, noisePx: number): Point[][] {
  const r = randomFrom(7);
  const [a, b, c, d] = corners(base);
  return [
    [a, b],
    [b, c],
    [c, d],
    [d, a],
  ].map(([from, to]) =>
    Array.from({ length: 140 }, (_, k): Point => {
      const t = 0.05 + (0.9 * (k + 0.5)) / 140;
      const [x, y] = toPx([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]);
      return [x + noisePx * r.normal(), y + noisePx * r.normal()];
    }),
  );
}

/** Largest and mean error of places within the sheet, in mm, the map being corners and bow. */
function errorMm(toPx: (p: Point) => Point, cornersPx: Quad, bow?: Bow) {
  const m = homographyFromQuad(cornersPx, base);
  const errors: number[] = [];
  for (let x = 5; x < base.width; x += 9.5) {
    for (let y = 5; y < base.height; y += 9.2) {
      const truth = toPx([x, y]);
      const seen = applyHomography(m, bow ? bent(bow, base, [x, y]) : [x, y]);
      errors.push(Math.hypot(seen[0] - truth[0], seen[1] - truth[1]) / 9);
    }
  }
  return { most: Math.max(...errors), mean: errors.reduce((s, e) => s + e, 0) / errors.length };
}

const small = { width: 60, height: 40 };
const smallCorners: Quad = [
  [100, 80],
  [700, 120],
  [660, 520],
  [60, 470],
];
const bowed: Bow = { top: [4, 0.5], right: [0.4, 0], bottom: [3.4, -0.4], left: [0, 0] };

/** A photograph, on black, of a bowed sheet with a pattern that is known in mm. */
function bowedPhoto(): Photo {
  const toMm = invertHomography(homographyFromQuad(smallCorners, small));
  const [width, height] = [800, 600];
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p += 4) {
      const seen = applyHomography(toMm, [x + 0.5, y + 0.5]);
      let flat = seen;
      for (let n = 0; n < 12; n++) {
        const [u, v] = bent(bowed, small, flat);
        flat = [flat[0] + seen[0] - u, flat[1] + seen[1] - v];
      }
      const out = flat[0] < 0 || flat[1] < 0 || flat[0] > small.width || flat[1] > small.height;
      for (let c = 0; c < 3; c++) rgba[p + c] = out ? 20 : pattern(flat[0], flat[1]);
    }
  }
  return { name: 'bowed', width, height, rgba };
}

const pattern = (x: number, y: number) => Math.round(170 + 30 * Math.sin(0.4 * x) + 30 * Math.cos(0.5 * y));

/** Mean difference from the pattern, levels, a millimetre inside the sheet. */
function meanError(sheet: SquaredSheet): number {
  let sum = 0;
  let n = 0;
  for (let j = 10; j < sheet.height - 10; j++) {
    for (let i = 10; i < sheet.width - 10; i++, n++) {
      const truth = pattern((i + 0.5) / sheet.pxPerMm, (j + 0.5) / sheet.pxPerMm);
      sum += Math.abs(sheet.rgb[(j * sheet.width + i) * 3] - truth);
    }
  }
  return sum / n;
}

describe('a sheet that is not flat', () => {
  it('is seen to bow, and squared up with its bow its pattern lies where it should', () => {
    const photo = bowedPhoto();
    const outline = { cornersPx: smallCorners, certainty: 1, k1: 0, residualMm: 0 };
    const seen = seeBow(photo, outline, small);
    expect(seen.bow!.top[0]).toBeCloseTo(bowed.top[0], 0);
    expect(seen.bow!.bottom[0]).toBeCloseTo(bowed.bottom[0], 0);
    expect(seen.residualMm).toBeGreaterThan(0.8);
    const straight = meanError(squareUp(photo, smallCorners, small));
    const curved = meanError(squareUp(photo, seen.cornersPx, small, { bow: seen.bow }));
    expect(curved).toBeLessThan(1);
    expect(straight).toBeGreaterThan(3 * curved);
  });

  it.each([200, 400])('bent on a cylinder of %d mm is mapped nearer by its sides', (radius) => {
    const toPx = camera(radius);
    const truly = corners(base).map(toPx) as unknown as Quad;
    const found = bowOf(truly, edgePoints(toPx, 0.7), base)!;
    const before = errorMm(toPx, truly);
    const after = errorMm(toPx, found.cornersPx, found.bow);
    expect(after.mean).toBeLessThan(0.6 * before.mean);
    expect(after.most).toBeLessThan(before.most);
  });

  it('that is flat keeps its homography to the bit', () => {
    const toPx = camera(Infinity);
    const truly = corners(base).map(toPx) as unknown as Quad;
    expect(bowOf(truly, edgePoints(toPx, 0.7), base)).toBeUndefined();
    const none: Bow = { top: [0, 0], right: [0, 0], bottom: [0, 0], left: [0, 0] };
    expect(bent(none, base, [31.7, 90.2])).toEqual([31.7, 90.2]);
  });
});

describe('turnBow', () => {
  it('turned on with its corners, a bow bends every place of the sheet as before', () => {
    const { width: w, height: h } = small;
    const on = (turns: number, [x, y]: Point): Point =>
      turns === 1 ? [y, w - x] : turns === 2 ? [w - x, h - y] : [h - y, x];
    for (const turns of [1, 2, 3]) {
      const size = turns === 2 ? small : { width: h, height: w };
      const turnedBow = turnBow(bowed, turns);
      for (const place of [
        [5, 3],
        [30, 0],
        [60, 12],
        [41, 40],
        [0, 22],
      ] as Point[]) {
        const [x, y] = bent(turnedBow, size, on(turns, place));
        const [u, v] = on(turns, bent(bowed, small, place));
        expect(x).toBeCloseTo(u, 9);
        expect(y).toBeCloseTo(v, 9);
      }
    }
  });
});
