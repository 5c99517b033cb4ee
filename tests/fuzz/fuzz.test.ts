import { expect, test } from 'vitest';
import { randomFrom } from '../generate/random.ts';
import { badCard } from './badCard.ts';
import { badPhoto } from './badPhoto.ts';
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

test('spoiling leaves the sound input sound, and the same seed spoils alike', () => {
  const photo = Buffer.from(Array.from({ length: 900 }, (_, k) => k % 251));
  const card = { lamps: [{ at: [1, 2] }, { at: [3, 4] }], note: 'x' };
  const before = [photo.toString('hex'), JSON.stringify(card)];
  const spoil = () =>
    Array.from({ length: 300 }, (_, n) => [
      Buffer.from(badPhoto(randomFrom(n), photo)).toString('hex'),
      badCard(randomFrom(n), card),
    ]);
  const first = spoil();
  expect([photo.toString('hex'), JSON.stringify(card)]).toEqual(before);
  expect(spoil()).toEqual(first);
});
