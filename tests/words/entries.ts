import { readdirSync } from 'node:fs';
import { languages } from '../../src/words/language.ts';

/** A sentence, or the function that writes one. */
export type Entry = string | ((...given: unknown[]) => unknown);

const home = new URL('../../src/words/', import.meta.url);

export const areas = readdirSync(new URL('en/', home)).map((file) => file.replace('.ts', ''));
export const foreign = languages.filter((each) => each !== 'en');

/** All entries of a language's own files, by area and key: "plan.page.tools.pick". */
export async function entriesOf(language: string): Promise<Map<string, Entry>> {
  const found = new Map<string, Entry>();
  for (const area of areas) {
    const words = (await import(/* @vite-ignore */ new URL(`${language}/${area}.ts`, home).href)) as object;
    for (const group of Object.values(words)) gather(area, group, found);
  }
  return found;
}

function gather(key: string, entry: unknown, found: Map<string, Entry>): void {
  if (typeof entry === 'string' || typeof entry === 'function') {
    found.set(key, entry as Entry);
    return;
  }
  for (const [name, inner] of Object.entries(entry as object)) gather(`${key}.${name}`, inner, found);
}
