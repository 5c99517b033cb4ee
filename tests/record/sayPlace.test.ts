import { describe, expect, it } from 'vitest';
import { cardSchema } from '../../src/card/schema.ts';
import { sayPlace } from '../../src/record/sayPlace.ts';

const card = cardSchema.parse({
  format: 'foilproof/1',
  base: { width_mm: 105, height_mm: 148 },
  lamps: [
    { id: 'L1', plus: [20, 20], minus: [26, 20] },
    { id: 'L2', plus: [44, 20], minus: [50, 20] },
    { id: 'L9', plus: [70, -20], minus: [76, -20], on: 'F1' },
  ],
  cell: { kind: 'CR2032', at: [30, 120] },
  contacts: [{ id: 'C1', how: 'stroke', order: 1, at: [80, 80] }],
});
const at = (x: number, y: number, sheet = 'base') => sayPlace({ at: [x, y], sheet }, card);

describe('a place in words', () => {
  it('names the nearest part within 10 mm', () => {
    expect(at(42, 24)).toBe('42.0 mm from the left, 24.0 mm from the top, by lamp L2');
    expect(at(30, 24)).toMatch(/, by lamp L1$/);
    expect(at(80, 71)).toMatch(/, by contact C1$/);
  });

  it('counts from the rim of the cell, 20 mm across (IEC 60086-2)', () => {
    expect(at(30, 139.9)).toMatch(/, by the cell$/);
    expect(at(30, 140.1)).toMatch(/from the top$/);
  });

  it('names no part of another sheet', () => {
    expect(at(73, -15)).toMatch(/from the top$/);
    expect(at(73, -15, 'F1')).toMatch(/, by lamp L9$/);
  });
});
