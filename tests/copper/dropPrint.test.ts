import { expect, test } from 'vitest';
import { dropPrint, type CopperMask } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { randomFrom } from '../generate/random.ts';

const size = { width: 400, height: 120, pxPerMm: 10 };
type Rgb = readonly [number, number, number];
const paper: Rgb = [214, 212, 206];
const ink: Rgb = [70, 70, 72];

/** A line of print 20 x 2 mm and a strip of tape 20 x 2 mm, each as one region of the mask. */
function drawn(ground: Rgb): { sheet: SquaredSheet; mask: CopperMask } {
  const random = randomFrom(4);
  const rgb = new Uint8Array(3 * size.width * size.height);
  const filled = new Uint8Array(size.width * size.height);
  for (let y = 0, k = 0; y < size.height; y++)
    for (let x = 0; x < size.width; x++, k++) {
      const along = x >= 50 && x < 250;
      const print = along && y >= 20 && y < 40;
      const tape = along && y >= 70 && y < 90;
      filled[k] = print || tape ? 1 : 0;
      // Letters leave paper between their strokes; facets of foil are dark and brown, or mirror the lamp.
      const stroke = x % 6 < 3 || y % 9 < 3;
      const facet: Rgb = (Math.floor(x / 8) + Math.floor(y / 5)) % 4 ? [118, 84, 62] : [252, 250, 246];
      const colour = print ? (stroke ? ink : ground) : tape ? facet : ground;
      colour.forEach((value, c) => (rgb[3 * k + c] = value + random.between(-4, 4)));
    }
  const frame = { ...size, originMm: [0, 0] as const, baseMm: { width: 40, height: 12 } };
  const toPhoto = [1, 0, 0, 0, 1, 0, 0, 0, 1] as const;
  const sheet = { ...frame, rgb, toPhoto, photoPxPerMm: 10 } as unknown as SquaredSheet;
  const likelihood = filled.map((v) => 255 * v);
  const mask: CopperMask = {
    ...frame,
    filled,
    strict: filled.slice(),
    likelihood,
    readable: 1,
    troubles: [],
    by: 'learned',
  };
  return { sheet, mask };
}

const inRows = (values: Uint8Array, from: number, to: number) =>
  values.subarray(from * size.width, to * size.width).reduce((sum, v) => sum + v, 0);

test('a line of print is no copper, narrow tape beside it is', () => {
  const { sheet, mask } = drawn(paper);
  const { filled, strict } = dropPrint(mask, sheet);
  expect(inRows(filled, 20, 40)).toBe(0);
  expect(inRows(strict, 20, 40)).toBe(0);
  expect(inRows(filled, 70, 90)).toBe(200 * 20);
  // The mask given stays as it is.
  expect(inRows(mask.filled, 20, 40)).toBe(200 * 20);
});

test('what the maker taught stays, and on brown paper nothing is told from ink', () => {
  const { sheet, mask } = drawn(paper);
  expect(dropPrint(mask, sheet, [[10, 3]])).toBe(mask);
  const brown = drawn([150, 112, 76]);
  expect(dropPrint(brown.mask, brown.sheet)).toBe(brown.mask);
});
