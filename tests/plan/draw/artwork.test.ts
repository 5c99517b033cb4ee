import { expect, it } from 'vitest';
import type { Point, Quad } from '../../../src/geometry/index.ts';
import {
  artworkMatrix,
  fitArtwork,
  layArtwork,
  pullArtwork,
  scaleArtwork,
  shiftArtwork,
} from '../../../src/plan/index.ts';

const base = { width: 105, height: 148 };
const picture = { width: 2100, height: 1480 };

/** Where CSS puts a picture's pixel, mm at 1 px a mm. @source CSS Transforms Module Level 2: matrix3d by columns */
function shownAt(corners: Quad, [x, y]: Point): Point {
  const m = artworkMatrix(corners, base, 1, [0, 0]);
  const at = (row: number) => m[row] * x + m[4 + row] * y + m[12 + row];
  return [at(0) / at(3), at(1) / at(3)];
}

it('a picture is laid as large as the base allows, in its middle', () => {
  const corners = fitArtwork(picture, base);
  const [left, top] = shownAt(corners, [0, 0]);
  const [right, bottom] = shownAt(corners, [2100, 1480]);
  expect([left, right]).toEqual([expect.closeTo(0, 6), expect.closeTo(105, 6)]);
  expect(top).toBeCloseTo(37, 6);
  expect(bottom).toBeCloseTo(111, 6);
});

it('shifting moves every place by as much', () => {
  const corners = shiftArtwork(fitArtwork(picture, base), base, [7, -3]);
  expect(shownAt(corners, [1050, 740])).toEqual([expect.closeTo(59.5, 6), expect.closeTo(71, 6)]);
});

it('two places come to lie as far apart as measured, the first staying where it is', () => {
  const before = fitArtwork(picture, base);
  const a: Point = [20, 60];
  const b: Point = [50, 100];
  const [pixelA, pixelB] = [
    [400, 460],
    [1000, 1260],
  ] as const;
  expect(shownAt(before, pixelA)).toEqual([expect.closeTo(a[0], 6), expect.closeTo(a[1], 6)]);
  const after = scaleArtwork(before, base, a, b, 80)!;
  expect(shownAt(after, pixelA)).toEqual([expect.closeTo(20, 6), expect.closeTo(60, 6)]);
  const [bx, by] = shownAt(after, pixelB);
  expect(Math.hypot(bx - 20, by - 60)).toBeCloseTo(80, 6);
  expect(scaleArtwork(before, base, a, a, 80)).toBeUndefined();
});

it('four tapped corners come to the corners of the base, out of perspective', () => {
  const before = fitArtwork(picture, base);
  const pixels = [
    [300, 200],
    [1800, 260],
    [1700, 1400],
    [380, 1300],
  ] as const;
  const taps = pixels.map((pixel) => shownAt(before, pixel)) as unknown as Quad;
  const after = layArtwork(before, base, taps);
  const wanted = [
    [0, 0],
    [105, 0],
    [105, 148],
    [0, 148],
  ];
  for (const [k, pixel] of pixels.entries()) {
    const [x, y] = shownAt(after, pixel);
    expect(Math.hypot(x - wanted[k][0], y - wanted[k][1])).toBeLessThan(1e-6);
  }
});

it('is drawn out by one corner of the picture, the other three staying', () => {
  const before = fitArtwork(picture, base);
  const corners: Point[] = [
    [0, 0],
    [2100, 0],
    [2100, 1480],
    [0, 1480],
  ];
  const edges = corners.map((pixel) => shownAt(before, pixel));
  const to: Point = [edges[2][0] - 8, edges[2][1] + 5];
  const after = pullArtwork(before, base, picture, 2, to)!;
  for (const [k, [x, y]] of [edges[0], edges[1], to, edges[3]].entries()) {
    const [u, v] = shownAt(after, corners[k]);
    expect(Math.hypot(u - x, v - y)).toBeLessThan(1e-6);
  }
  // Drawn over the opposite corner the picture would lie folded.
  const over: Point = [edges[0][0] - 5, edges[0][1] - 5];
  expect(pullArtwork(before, base, picture, 2, over)).toBeUndefined();
});
