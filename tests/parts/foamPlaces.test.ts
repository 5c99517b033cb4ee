import { expect, test } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import { foamPlaces } from '../../src/parts/index.ts';

const base = { format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 } };
const stroke = (id: string, order: number, x: number) => ({ id, how: 'stroke', order, at: [x, 112] });

// Common practice, no source: foam on three sides of the cell, one piece at the end of a stroke row.
test('foam belongs round the cell and half a step past the last contact in the order of the stroke', () => {
  const contacts = [stroke('C2', 2, 32), stroke('C3', 3, 44), stroke('C1', 1, 20)];
  const card = cardSchema.parse({ ...base, cell: { at: [26, 132] }, contacts });
  expect(foamPlaces(card)).toEqual({ cell: [26, 132], strokeEnd: [50, 112] });
});

test('nothing is asked for where there is neither cell nor stroke', () => {
  expect(foamPlaces(cardSchema.parse(base))).toEqual({ cell: undefined, strokeEnd: undefined });
});
