import { expect, it } from 'vitest';
import type { Binary } from '../maskScore.ts';
import { answerTo, mistakesIn } from './mistakes.ts';

type Box = [number, number, number, number];

function drawn(...boxes: Box[]): Binary {
  const data = new Uint8Array(100 * 60);
  for (const [x0, y0, x1, y1] of boxes)
    for (let j = y0; j < y1; j++) data.fill(1, j * 100 + x0, j * 100 + x1);
  return { width: 100, height: 60, data };
}

const strips: Box[] = [
  [5, 10, 45, 20],
  [50, 10, 95, 20],
];

it('the same pieces are no mistake, nor are specks and ragged borders', () => {
  expect(mistakesIn(drawn(...strips), drawn(...strips), 50)).toEqual([]);
  const ragged = drawn([6, 9, 45, 20], [50, 11, 95, 20], [10, 40, 14, 44]);
  expect(mistakesIn(ragged, drawn(...strips), 50)).toEqual([]);
});

it('a join of two true pieces is tapped as paper within it, a cleft of one as copper within it', () => {
  const joined = drawn([5, 10, 95, 20]);
  const [merge, ...more] = mistakesIn(joined, drawn(...strips), 50);
  expect(more).toEqual([]);
  expect([merge.kind, answerTo(merge), merge.area]).toEqual(['merge', 'paper', 400]);
  expect(Math.abs(merge.at[0] - 47.5)).toBeLessThanOrEqual(1.5);
  expect(Math.abs(merge.at[1] - 15)).toBeLessThanOrEqual(1.5);
  const [split, ...others] = mistakesIn(drawn(...strips), joined, 50);
  expect(others).toEqual([]);
  expect([split.kind, answerTo(split)]).toEqual(['split', 'copper']);
  expect(Math.abs(split.at[0] - 47.5)).toBeLessThanOrEqual(1.5);
});

it('two joins of the same pieces are two places', () => {
  const truth = drawn([5, 10, 95, 20], [5, 30, 95, 40]);
  const found = drawn([5, 10, 95, 20], [5, 30, 95, 40], [10, 20, 14, 30], [80, 20, 84, 30]);
  const mistakes = mistakesIn(found, truth, 50);
  expect(mistakes.map(({ kind }) => kind)).toEqual(['merge', 'merge']);
  expect(mistakes.map(({ at }) => Math.round(at[0] / 10)).sort()).toEqual([1, 8]);
});

it('a false piece and a missing one are tapped in their middle, the larger mistake first', () => {
  const found = drawn(strips[0], [60, 40, 80, 50]);
  const mistakes = mistakesIn(found, drawn(...strips), 50);
  expect(mistakes.map((each) => [each.kind, answerTo(each)])).toEqual([
    ['missing', 'copper'],
    ['false', 'paper'],
  ]);
  expect(mistakes[1].at[1]).toBeGreaterThan(43);
  expect(mistakes[1].at[1]).toBeLessThan(47);
});
