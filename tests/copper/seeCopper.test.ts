import { expect, test } from 'vitest';
import { seeCopper } from '../../src/copper/index.ts';
import { copperWords } from '../../src/words/copper.ts';
import { drawStrip } from '../trace/creasedStrip.ts';

const overlap = (a: Uint8Array, b: Uint8Array): number => {
  let both = 0;
  let either = 0;
  a.forEach((v, k) => {
    both += v & b[k];
    either += v | b[k];
  });
  return both / either;
};

test.each(['white', 'kraft'] as const)('a creased strip on %s paper is seen whole: IoU over 0.9', (paper) => {
  for (const seed of [1, 2, 3, 4, 5]) {
    const { sheet, truth } = drawStrip({ seed, paper, gapMm: 0 });
    const mask = seeCopper(sheet);
    expect(overlap(mask.filled, truth)).toBeGreaterThan(0.9);
    expect(mask.readable).toBeGreaterThan(0.5);
    expect(mask.by).toBe('classical');
  }
});

test('filled holds all of strict', () => {
  const { sheet } = drawStrip({ seed: 6, paper: 'white', gapMm: 0 });
  const { filled, strict } = seeCopper(sheet);
  expect(strict.every((v, k) => !v || filled[k])).toBe(true);
});

test('a cut of 1.5 mm is not closed by the bridging of glare', () => {
  for (const seed of [1, 2, 3, 4]) {
    const { sheet, gapAt } = drawStrip({ seed, paper: 'white', gapMm: 1.5 });
    const { filled } = seeCopper(sheet);
    const [i, j] = [Math.floor(gapAt[0] * 10), Math.floor(gapAt[1] * 10)];
    expect(filled[j * sheet.width + i]).toBe(0);
  }
});

test('bare paper: no copper, not readable, and the words for it exist', () => {
  const { sheet, truth } = drawStrip({ seed: 8, paper: 'white', gapMm: 0 });
  const bare = sheet.rgb.slice();
  for (let k = 0; k < truth.length; k++)
    bare.set(sheet.rgb.subarray(3 * (k % 320), 3 * (k % 320) + 3), 3 * k);
  const mask = seeCopper({ ...sheet, rgb: bare });
  expect(mask.filled.some((v) => v)).toBe(false);
  expect(mask.readable).toBeLessThan(0.5);
  expect(mask.troubles).toEqual(['no-copper']);
  expect(copperWords.troubles['no-copper']).toContain('No copper');
});

test('the net leads: its map becomes the mask; a map of noise is not trusted', () => {
  const { sheet, truth } = drawStrip({ seed: 9, paper: 'white', gapMm: 0 });
  const none = new Uint8Array(truth.length);
  const learned = { copper: truth.map((v) => v * 250), lamp: none, cell: none };
  const mask = seeCopper(sheet, { learned });
  expect(mask.by).toBe('learned');
  expect(overlap(mask.filled, truth)).toBeGreaterThan(0.98);
  expect(mask.readable).toBeGreaterThan(0.8);
  const blots = truth.map((_, k) => {
    const [i, j] = [k % sheet.width, Math.floor(k / sheet.width)];
    return Math.hypot((i % 110) - 55, (j % 110) - 55) < 45 ? 140 : 0;
  });
  const wrong = seeCopper(sheet, { learned: { copper: blots, lamp: none, cell: none } });
  expect(wrong.readable).toBeLessThan(0.5);
  expect(wrong.troubles).toContain('odd-shapes');
});

test('a lamp that the net sees over a hole stays a hole', () => {
  const { sheet, truth } = drawStrip({ seed: 10, paper: 'white', gapMm: 0 });
  const lamp = truth.map((_, k) =>
    Math.hypot((k % sheet.width) - 160, Math.floor(k / sheet.width) - 60) < 8 ? 255 : 0,
  );
  const copper = truth.map((v, k) => (lamp[k] ? 0 : v * 250));
  const { filled } = seeCopper(sheet, { learned: { copper, lamp, cell: new Uint8Array(truth.length) } });
  expect(filled[60 * sheet.width + 160]).toBe(0);
});
