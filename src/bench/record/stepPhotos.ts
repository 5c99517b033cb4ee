import type { Card, CardPhoto } from '../../card/index.ts';
import { byDate, dayOf, stepLongestPx, stepOf } from '../../record/steps.ts';
import type { StepPhoto } from '../../record/steps.ts';
import { recordWords as words } from '../../words/record.ts';
import type { KeptShot } from '../state/types.ts';
import { encoded } from './encoded.ts';

interface Taken {
  name: string;
  step: string;
  /** ISO date and time. */
  taken?: string;
  file: Blob;
}

/**
 * Every photograph that the card rests on, drawn small, the earliest first: the base, further shots of it, the base before
 * a patch, flaps. What a device cannot show is left out.
 */
export async function stepPhotos(
  card: Card,
  shot: KeptShot | undefined,
  again: readonly KeptShot[] = [],
): Promise<StepPhoto[]> {
  const taken: Taken[] = [
    ...(await Promise.all(card.photos.filter(({ base64 }) => base64 !== undefined).map(heldWithin))),
    ...(shot ? [{ ...shot, step: words.steps.base }] : []),
    ...again.map((each) => ({ ...each, step: words.steps.again })),
  ];
  const steps = await Promise.all(byDate(taken).map(drawn));
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
  return { name, file, taken, step: stepOf(shows) };
}

async function drawn({ name, step, taken, file }: Taken): Promise<StepPhoto | undefined> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!bitmap) return undefined;
  const image = await encoded(bitmap, { longestPx: stepLongestPx, quality: 0.8 });
  bitmap.close();
  return { name, step, image, ...(taken ? { taken: dayOf(taken) } : {}) };
}
