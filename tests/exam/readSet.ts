import { access, readFile, readdir } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { z } from 'zod';
import type { Entry } from './entry.ts';
import { readFixtureEntry } from './fixtureSet.ts';
import { readPlainEntry } from './plainSet.ts';
import { readRenderEntry } from './renderSet.ts';

const json = async (path: string): Promise<unknown> => JSON.parse(await readFile(path, 'utf8'));
export const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/** Names of the photographs of a folder that come with truth, in order. */
export async function namesIn(folder: string): Promise<string[]> {
  const photos = (await readdir(folder)).filter(
    (f) => /\.(jpe?g|png|webp)$/i.test(f) && !/_\w+\.png$/.test(f),
  );
  const names: string[] = [];
  for (const photo of photos.sort()) {
    const stem = join(folder, photo.slice(0, -extname(photo).length));
    if ((await exists(`${stem}_mask.png`)) || (await exists(`${stem}_rect_mask.png`))) names.push(photo);
  }
  return names;
}

/** Reads one photograph's truth in whichever of the three layouts it comes. */
export async function readEntry(folder: string, photo: string): Promise<Entry> {
  const name = photo.slice(0, -extname(photo).length);
  const stem = join(folder, name);
  if (await exists(`${stem}_question.json`)) return readRenderEntry(stem, name, json);
  const about = await json(`${stem}.json`).catch(() => ({}));
  const schema = z.object({ schema: z.string() }).safeParse(about).data?.schema;
  if (schema === 'foilproof-fixture/1') return readFixtureEntry(stem, name, json);
  return readPlainEntry(stem, join(folder, photo), name, json);
}
