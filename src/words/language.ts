import { speak } from './spoken.ts';

/** Languages of the catalogue, each by its own name. English is the first and the measure of the others. */
export const languageNames = { en: 'English', de: 'Deutsch', fr: 'Français' } as const;
export type Language = keyof typeof languageNames;
export const languages = Object.keys(languageNames) as Language[];

const others = {
  de: () => import('./de/index.ts').then(({ german }) => german),
  fr: () => import('./fr/index.ts').then(({ french }) => french),
};

let chosen: Language = 'en';

/** The language that is spoken now. */
export function language(): Language {
  return chosen;
}

/** Speaks a language from now on; its words are fetched when they are first asked for. */
export async function chooseLanguage(wanted: Language): Promise<void> {
  speak(wanted === 'en' ? undefined : await others[wanted]());
  chosen = wanted;
}

/** The first language of a list that is spoken here, told by tags such as "de-CH", "de_AT.UTF-8"; English if none is. */
export function languageOf(tags: readonly string[]): Language {
  for (const tag of tags) {
    const known = languages.find((each) => each === tag.toLowerCase().split(/[-_.@]/)[0]);
    if (known) return known;
  }
  return 'en';
}
