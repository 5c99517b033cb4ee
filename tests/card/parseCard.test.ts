import { describe, expect, it } from 'vitest';
import { parseCard } from '../../src/card/index.ts';

const card = (more: object) =>
  JSON.stringify({ format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 }, ...more });

describe('A card file from elsewhere', () => {
  it('is taken with only a base, and filled with defaults', () => {
    const { lamps, limits, base } = parseCard(card({}), 'a.json');
    expect({ lamps, clearance: limits.clearance_mm, margin: base.margin_mm }).toEqual({
      lamps: [],
      clearance: 1,
      margin: 0,
    });
  });

  it.each([
    ['{"format":', 'not JSON'],
    ['[]', 'no card file'],
    [card({ lampz: [] }), '"lampz"'],
    [card({ lamps: [{ id: 'L1', plus: [1, 2], minus: [3, 4], color: 'red' }] }), 'lamps[0]'],
    [card({ lamps: [{ id: 'L1', plus: [1], minus: [3, 4] }] }), 'lamps[0].plus'],
    [card({ base: { width_mm: 105 } }), 'base.height_mm'],
    [card({ cell: { at: [12, 400] } }), 'lies off the base (105 x 148 mm)'],
    [card({ lamps: [1, 2].map(() => ({ id: 'L1', plus: [1, 2], minus: [3, 4] })) }), 'two lamps L1'],
    [JSON.stringify({ format: 'foilproof/9', base: { width_mm: 105, height_mm: 148 } }), 'format'],
  ])('is refused with the place that is wrong: %s', (text, part) => {
    expect(() => parseCard(text, 'a.json')).toThrow(part);
  });
});
