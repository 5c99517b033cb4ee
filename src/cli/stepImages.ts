import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import sharp from 'sharp';
import type { CardPhoto } from '../card/index.ts';
import { takenAt } from '../photo/takenAt.ts';
import { byDate, dayOf, stepLongestPx, stepOf } from '../record/index.ts';
import type { StepPhoto } from '../record/index.ts';
import { recordWords } from '../words/record.ts';
import type { Job } from './job.ts';

/** What the card says of a photograph; of one named at the command line nothing. */
type Given = Partial<CardPhoto>;

/** Every photograph that a check rests on, small, the earliest first; its day from the card, else by its camera's clock. */
export async function stepImages({ photo, again, sheets = [], base }: Job): Promise<StepPhoto[]> {
  const files: { path: string; given: Given; step?: string }[] = [
    ...sheets,
    { path: photo, given: base ?? {} },
    ...(again === undefined ? [] : [{ path: again, given: {}, step: recordWords.steps.again }]),
  ];
  const read = await Promise.all(
    files.map(async (file) => {
      const bytes = await readFile(file.path);
      return { ...file, bytes, taken: file.given.taken ?? takenAt(bytes) };
    }),
  );
  return Promise.all(byDate(read).map(small));
}

/** Drawn anew: neither place nor device goes along. */
async function small({
  path,
  given,
  step,
  bytes,
  taken,
}: {
  path: string;
  given: Given;
  step?: string;
  bytes: Uint8Array;
  taken?: string;
}): Promise<StepPhoto> {
  const { data, info } = await sharp(bytes)
    .rotate()
    .resize(stepLongestPx, stepLongestPx, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .jpeg({ quality: 80 })
    .toBuffer({ resolveWithObject: true });
  return {
    name: given.name ?? basename(path),
    step: step ?? stepOf({ sheet: 'base', ...given }),
    ...(taken === undefined ? {} : { taken: dayOf(taken) }),
    image: {
      media: 'image/jpeg',
      base64: data.toString('base64'),
      width: info.width,
      height: info.height,
    },
  };
}
