import { expect, test } from 'vitest';
import { emptyCard } from '../../src/bench/state/emptyBench.ts';
import { earlier, stageOf } from '../../src/bench/state/stageOf.ts';
import { strokeChange } from '../../src/bench/worker/strokeChange.ts';

const card = emptyCard();
const stroke = (x: number) => ({ do: 'add' as const, width_mm: 3, path: [[x, 1]] as [number, number][] });

test('a change is renewed from its own stage on, words from none', () => {
  expect(stageOf(card, { ...card, base: { ...card.base, width_mm: 90 } })).toBe('square');
  expect(stageOf(card, { ...card, teach: { copper: [[1, 2]], paper: [] } })).toBe('copper');
  expect(stageOf(card, { ...card, touch_up: [stroke(1)] })).toBe('trace');
  expect(stageOf(card, { ...card, lamps: [] })).toBe('net');
  expect(stageOf(card, { ...card, touch_up: [stroke(1)], lamps: [] })).toBe('trace');
  expect(stageOf(card, { ...card, title: 'other' })).toBeUndefined();
  expect(earlier('net', 'copper')).toBe('copper');
  expect(earlier('square', 'net')).toBe('square');
});

test('one stroke more or less at the end is told from any other change', () => {
  expect(strokeChange([stroke(1)], [stroke(1), stroke(2)])).toEqual(stroke(2));
  expect(strokeChange([stroke(1), stroke(2)], [stroke(1)])).toBe('taken back');
  expect(strokeChange([stroke(1), stroke(2)], [stroke(2)])).toBeUndefined();
  expect(strokeChange([stroke(1)], [stroke(1)])).toBeUndefined();
});
