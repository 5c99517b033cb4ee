import type { Catalogue } from './catalogue.ts';

let chosen: Catalogue | undefined;

/** Speaks a catalogue from now on; English where none is given. */
export function speak(catalogue: Catalogue | undefined): void {
  chosen = catalogue;
}

/**
 * An area's words in the language chosen at the time they are read, so that a module may hold on to them.
 * @param english the words to speak until another language is chosen, and the measure of all others
 */
export function spoken<Area extends keyof Catalogue>(area: Area, english: Catalogue[Area]): Catalogue[Area] {
  return live(english, () => chosen?.[area] ?? english);
}

/** An object like the pattern whose entries are looked up anew each time; objects in it likewise. */
function live<T extends object>(pattern: T, now: () => T): T {
  const words = {} as T;
  for (const key of Object.keys(pattern) as (keyof T)[]) {
    const entry = pattern[key];
    const deeper = isGroup(entry) ? live(entry as object, () => now()[key] as object) : undefined;
    Object.defineProperty(words, key, { enumerable: true, get: () => deeper ?? now()[key] });
  }
  return words;
}

function isGroup(entry: unknown): boolean {
  return typeof entry === 'object' && entry !== null && !Array.isArray(entry);
}
