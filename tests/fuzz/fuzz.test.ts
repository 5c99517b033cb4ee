import { expect, test } from 'vitest';
import { fuzzCards, fuzzPhotos } from './runFuzz.ts';

// A slice of what `npm run fuzz` does ten thousand times; seeds of its own.
test('spoilt card files end with a sentence or a verdict', async () => {
  const { broken, refused, answered } = await fuzzCards(20_000, 150);
  expect(broken).toEqual([]);
  expect(Math.min(refused, answered)).toBeGreaterThan(0);
});

test('spoilt picture files end with a sentence or a verdict', async () => {
  const { broken, refused, answered } = await fuzzPhotos(20_000, 10);
  expect(broken).toEqual([]);
  expect(Math.min(refused, answered)).toBeGreaterThan(0);
});
