import type { Card, CardPhoto } from '../../card/index.ts';
import type { RecordImages } from '../../record/types.ts';
import { foldWords } from '../../words/fold.ts';
import { language } from '../../words/language.ts';
import { recordWords as words } from '../../words/record.ts';
import type { KeptShot } from '../state/types.ts';
import { encoded } from './encoded.ts';

type Steps = NonNullable<RecordImages['steps']>;

interface Taken {
  name: string;
  step: string;
  /** ISO date and time at which it came to the page. */
  taken?: string;
  file: Blob;
}

/** Longest side of a photograph on record, px: a print of 120 mm at 250 dots an inch. */
const longestPx = 1200;

/**
 * Every photograph that the card rests on, drawn small, the earliest first: the base, further shots of it, the base before
 * a patch, flaps. What a device cannot show is left out.
 */
export async function stepPhotos(
  card: Card,
  shot: KeptShot | undefined,
  again: readonly KeptShot[] = [],
): Promise<Steps> {
  const taken: Taken[] = [
    ...(await Promise.all(card.photos.filter(({ base64 }) => base64 !== undefined).map(heldWithin))),
    ...(shot ? [{ ...shot, step: words.steps.base }] : []),
    ...again.map((each) => ({ ...each, step: words.steps.again })),
  ];
  const dated = taken.sort((a, b) => (a.taken ?? '').localeCompare(b.taken ?? ''));
  const steps = await Promise.all(dated.map(drawn));
  return steps.filter((step) => step !== undefined);
}

async function heldWithin({
  name,
  media = 'image/jpeg',
  base64,
  taken,
  ...shows
}: CardPhoto): Promise<Taken> {
  const file = await (await fetch(`data:${media};base64,${base64}`)).blob();
  return { name, file, taken, step: shows.step ?? stepOf(shows) };
}

function stepOf({
  sheet,
  before,
  after,
  fold_of,
}: Pick<CardPhoto, 'sheet' | 'before' | 'after' | 'fold_of'>): string {
  if (sheet === 'front') return words.steps.front;
  if (fold_of !== undefined) return foldWords.sheets.spread(fold_of);
  if (sheet !== 'base') return foldWords.sheets.flap(sheet);
  if (before !== undefined) return foldWords.sheets.before(before);
  return after === undefined ? words.steps.base : words.steps.after(after);
}

async function drawn({ name, step, taken, file }: Taken): Promise<Steps[number] | undefined> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!bitmap) return undefined;
  const image = await encoded(bitmap, { longestPx, quality: 0.8 });
  bitmap.close();
  return { name, step, image, ...(taken ? { taken: dayOf(taken) } : {}) };
}

function dayOf(taken: string): string {
  const day = new Date(taken);
  return Number.isNaN(day.getTime()) ? taken : day.toLocaleDateString(language(), { dateStyle: 'long' });
}
