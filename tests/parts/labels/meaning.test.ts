import { expect, test } from 'vitest';
import type { LineReader, ReadLine } from '../../../src/engine/ocr.ts';
import { meaningOf } from '../../../src/parts/labels/meaning.ts';
import { readBox } from '../../../src/parts/labels/readBox.ts';
import type { KnownNames } from '../../../src/parts/labels/index.ts';

const known = (...lamps: string[]): KnownNames => ({ lamps, others: ['C1'], tagIn: () => undefined });
const lamp = (text: string, names: KnownNames, aspect?: number) => {
  const means = meaningOf(text, names, aspect);
  return means.kind === 'lamp' ? means.id : means.kind;
};

test('a sign read as another, or twice, is mended by the names that are known and by the room there is', () => {
  expect(lamp('82', known('B2', 'B3'))).toBe('B2');
  expect(lamp('Wil', known('W1'), 1.7)).toBe('W1');
  expect(lamp('B85', known('B5'), 1.4)).toBe('B5');
  expect(lamp('L6 |', known('L6'))).toBe('L6');
  expect(lamp('HE', known('H8'))).toBe('H8');
  expect(lamp('LS', known('L5', 'L8'))).toBe('L5');
});

test('where two names are as near, or another part is named, no lamp is', () => {
  expect(lamp('HE', known('H6', 'H8'))).toBe('nothing');
  expect(lamp('C1', known('L1'))).toBe('nothing');
  // Three signs have no room in a box for one.
  expect(lamp('B85', known('B5'), 0.7)).toBe('nothing');
});

/** Answers as a recogniser might, one size after another. */
function reader(...texts: string[]): LineReader {
  const answers = texts.map((text): ReadLine => ({ text, certainty: 0.9 }));
  return { read: () => Promise.resolve(answers.shift() ?? answers[0]), close: () => Promise.resolve() };
}

const box = { box: { x0: 10, y0: 10, x1: 13, y1: 12 }, heightMm: 2, clear: true };
const picture = () => ({ width: 100, height: 60, grey: new Uint8Array(6000).fill(255) });

test('what two of three sizes say is taken; what one alone says of a name that nobody expects is doubted', async () => {
  const two = await readBox(box, picture, reader('B3', 'B8', 'B3'), known('B3', 'B8'));
  expect([two?.means, two?.certainty]).toEqual([{ kind: 'lamp', id: 'B3' }, 0.9]);
  const open = await readBox(box, picture, reader('B3', 'B8', '~'), known('B3', 'B8'));
  expect(open?.certainty).toBeLessThan(0.6);
  const alone = await readBox(box, picture, reader('D4', '~', '~'), known('B3'));
  expect(alone?.certainty).toBeLessThan(0.6);
  const strange = await readBox(box, picture, reader('D4', 'D4', '~'), known('B3'));
  expect(strange?.certainty).toBeGreaterThan(0.6);
});
