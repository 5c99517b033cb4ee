import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { randomFrom } from '../generate/random.ts';
import { answerToCard, answerToPhoto } from './answerTo.ts';
import type { Answer } from './answerTo.ts';
import { badCard } from './badCard.ts';
import { badPhoto } from './badPhoto.ts';

export interface Tally {
  refused: number;
  answered: number;
  /** The input that took longest, and how long. */
  slowest: { seed: number; ms: number };
  /** Seeds of inputs that ended with anything else, and what that was. */
  broken: { seed: number; what: string }[];
}

const fixtures = new URL('../../fixtures/', import.meta.url);

/** Cards from seeds `from` on, each spoilt from a fixture's card. */
export async function fuzzCards(from: number, count: number): Promise<Tally> {
  const goods = await Promise.all(
    ['sound', 'rim-short', 'half-laid'].map(async (name): Promise<unknown> =>
      JSON.parse(await readFile(new URL(`${name}.card.json`, fixtures), 'utf8')),
    ),
  );
  return tally(from, count, (seed) => {
    const random = randomFrom(seed);
    return Promise.resolve(answerToCard(badCard(random, random.pick(goods))));
  });
}

/** Picture files from seeds `from` on, each spoilt from a small JPEG, PNG or WebP with EXIF. */
export async function fuzzPhotos(from: number, count: number): Promise<Tally> {
  const small = sharp(await readFile(new URL('sound.jpg', fixtures)))
    .resize(240)
    .withExif({ IFD0: { Copyright: 'none' } });
  const goods = await Promise.all([
    small.clone().jpeg().toBuffer(),
    small.clone().png().toBuffer(),
    small.clone().webp().toBuffer(),
  ]);
  return tally(from, count, (seed) => {
    const random = randomFrom(seed);
    return answerToPhoto(badPhoto(random, random.pick(goods)));
  });
}

async function tally(from: number, count: number, answer: (seed: number) => Promise<Answer>): Promise<Tally> {
  const found: Tally = { refused: 0, answered: 0, slowest: { seed: from, ms: 0 }, broken: [] };
  for (let seed = from; seed < from + count; seed++) {
    const begun = performance.now();
    try {
      if ('refused' in (await answer(seed))) found.refused++;
      else found.answered++;
    } catch (error) {
      found.broken.push({ seed, what: String(error).slice(0, 300) });
    }
    const ms = performance.now() - begun;
    if (ms > found.slowest.ms) found.slowest = { seed, ms };
    if ((seed - from) % 100 === 99) tellSoFar(seed - from + 1, count, found);
  }
  return found;
}

/** A long run tells along the way. */
function tellSoFar(done: number, count: number, { broken, slowest }: Tally): void {
  process.stderr.write(
    `${done} of ${count}: ${broken.length} broken, slowest ${slowest.ms.toFixed(0)} ms (seed ${slowest.seed})\n`,
  );
}
