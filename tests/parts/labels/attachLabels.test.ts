import { expect, test } from 'vitest';
import { cardSchema } from '../../../src/card/index.ts';
import { nameLamps } from '../../../src/bench/labels/labelEdits.ts';
import { attachLabels, type Label, type LabelMeaning } from '../../../src/parts/labels/index.ts';

/** Two lamps 12 mm apart, and labels as they could be read. */
const card = cardSchema.parse({
  format: 'foilproof/1',
  base: { width_mm: 105, height_mm: 148 },
  lamps: [
    { id: 'L1', plus: [20, 24], minus: [20, 32] },
    { id: 'L2', plus: [32, 24], minus: [32, 32] },
  ],
});

function label(x: number, y: number, means: LabelMeaning, certainty = 0.9): Label {
  const box = { x0: x - 1.5, y0: y - 1, x1: x + 1.5, y1: y + 1 };
  return { text: '', certainty, at: [x, y], box, means };
}

const name = (x: number, y: number, id: string, certainty?: number) =>
  label(x, y, { kind: 'lamp', id }, certainty);
const told = (labels: Label[]) => attachLabels(labels, card).map(({ label: _label, ...rest }) => rest);

test('a name goes to the one lamp that it clearly stands by, and asks between two', () => {
  expect(told([name(15.5, 28, 'B1')])).toEqual([{ do: 'name-lamp', lamp: 'L1', as: 'B1' }]);
  expect(told([name(26, 28, 'B1')])).toEqual([{ do: 'ask', as: 'B1', between: ['L1', 'L2'] }]);
  expect(told([name(70, 90, 'B1')])).toEqual([]);
  expect(told([name(15.5, 28, 'B1', 0.4)])).toEqual([]);
});

test('two names for one lamp, one for two, or one that another lamp keeps are asked about', () => {
  expect(told([name(15.5, 28, 'B1'), name(15.5, 31, 'B2')]).map((each) => each.do)).toEqual(['ask', 'ask']);
  expect(told([name(15.5, 28, 'B1'), name(36.5, 28, 'B1')]).map((each) => each.do)).toEqual(['ask', 'ask']);
  expect(told([name(15.5, 28, 'L2')])).toEqual([{ do: 'ask', as: 'L2', between: ['L1'] }]);
  expect(told([name(15.5, 28, 'L2'), name(36.5, 28, 'L1')]).map((each) => each.do)).toEqual([
    'name-lamp',
    'name-lamp',
  ]);
});

test('a + tells which end it stands by, and nothing from the middle', () => {
  const plus = (y: number) => label(16.5, y, { kind: 'polarity', sign: '+' });
  expect(told([plus(24)])).toEqual([{ do: 'mark-plus', lamp: 'L1', side: 'plus', agrees: true }]);
  expect(told([plus(32)])).toEqual([{ do: 'mark-plus', lamp: 'L1', side: 'minus', agrees: false }]);
  expect(told([plus(28)])).toEqual([]);
});

test('lamps change names all at once; one whose name is taken gets another', () => {
  const ids = (names: { lamp: string; as: string }[]) => nameLamps(card, names).lamps.map(({ id }) => id);
  expect(
    ids([
      { lamp: 'L1', as: 'L2' },
      { lamp: 'L2', as: 'L1' },
    ]),
  ).toEqual(['L2', 'L1']);
  expect(ids([{ lamp: 'L1', as: 'L2' }])).toEqual(['L2', 'L2-2']);
});
