import { expect, it } from 'vitest';
import { components, dropRim } from '../../src/copper/index.ts';
import type { CopperMask } from '../../src/copper/index.ts';

type Box = [number, number, number, number];

/** A base of 20 x 12 mm at 10 px/mm with a margin of 3 mm round it, and copper in boxes of mm on the base. */
function mask(...boxes: Box[]): CopperMask {
  const [width, height] = [260, 180];
  const filled = new Uint8Array(width * height);
  for (const [x0, y0, x1, y1] of boxes)
    for (let j = 10 * y0 + 30; j < 10 * y1 + 30; j++)
      filled.fill(1, j * width + 10 * x0 + 30, j * width + 10 * x1 + 30);
  return {
    width,
    height,
    pxPerMm: 10,
    originMm: [-3, -3],
    baseMm: { width: 20, height: 12 },
    filled,
    strict: filled.slice(),
    likelihood: filled.map((v) => 250 * v),
    readable: 1,
    troubles: [],
    by: 'learned',
  };
}

const pieces = ({ filled, width, height }: CopperMask): number => components(filled, width, height, 8).count;

it('what is seen past the base’s edge all along it goes, on each side, inside and out', () => {
  const seen = mask([0, 2, 1, 10], [3, 11, 18, 12], [19.5, 1, 21, 9], [2, -1.2, 12, 0]);
  expect(pieces(seen)).toBe(4);
  const without = dropRim(seen);
  expect(pieces(without)).toBe(0);
  expect(without.strict.some((v) => v === 1)).toBe(false);
  expect(pieces(seen)).toBe(4);
});

it('tape flush with the edge, tape that runs out over it, and tape inside stay as they are', () => {
  const seen = mask([0, 2, 2, 10], [15, 5, 22, 7.5], [6, 4, 8, 4.5]);
  expect(dropRim(seen)).toBe(seen);
});
