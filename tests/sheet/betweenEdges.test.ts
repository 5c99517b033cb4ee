import { expect, it } from 'vitest';
import type { Quad } from '../../src/geometry/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import { betweenEdges } from '../../src/sheet/outline/betweenEdges.ts';
import { fitSides } from '../../src/sheet/outline/fitSides.ts';

const base = { width: 80, height: 60 };
const pxPerMm = 8;

/** Paper of 80 x 60 mm at (100, 80) px on a table, its right rim `rimMm` wide in a tone of its own. */
function rimmed(rimMm: number): Photo {
  const [width, height] = [840, 640];
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const paper = x >= 100 && x < 740 && y >= 80 && y < 560;
      const grey = !paper ? 150 : x >= 740 - rimMm * pxPerMm ? 195 : 235;
      rgba.fill(grey, 4 * (y * width + x), 4 * (y * width + x) + 3);
    }
  return { name: 'rimmed', width, height, rgba };
}

const upTo = (right: number): Quad => [
  [100, 80],
  [right, 80],
  [right, 560],
  [100, 560],
];

function rightSide(rimMm: number, guess: number): number {
  const photo = rimmed(rimMm);
  const fit = fitSides(photo, upTo(guess), 3, pxPerMm)!;
  return betweenEdges(photo, fit, base, pxPerMm).cornersPx[1][0];
}

it('lays a side midway between its two edges where a rim or a narrow shadow gives it two', () => {
  expect(rightSide(0.75, 734)).toBeCloseTo(737, 0);
});

it('leaves a side with one edge where it is', () => {
  expect(rightSide(0, 740)).toBeCloseTo(740, 0);
});
