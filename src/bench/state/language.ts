import { chooseLanguage, languageOf, type Language } from '../../words/language.ts';
import { measureAs } from '../../words/lengths.ts';
import { call } from '../worker/client.ts';
import { renewNow } from './renew.ts';
import { bench, change, subscribe } from './store.ts';

const keptAs = 'foilproof-language';

/** Speaks the language chosen on this device before, else the first of the browser's that is known here. */
export async function speakFirst(): Promise<void> {
  await speakOnPage(languageOf([keptLanguage(), ...navigator.languages])).catch(() => undefined);
}

/** Speaks another language from now on; what the check has said is said anew in it. */
export async function speakNow(language: Language): Promise<void> {
  await speakOnPage(language);
  try {
    localStorage.setItem(keptAs, language);
  } catch {
    // A device that keeps nothing asks the browser again next time.
  }
  const { shown } = bench();
  await call('speak', { language });
  if (shown) await renewNow('square', shown.outline);
}

/** Tells lengths in the unit of the card on the bench, now and after every change. */
export function measureAsCard(): void {
  subscribe(() => measureAs(bench().card));
}

async function speakOnPage(language: Language): Promise<void> {
  await chooseLanguage(language);
  document.documentElement.lang = language;
  change({ language });
}

function keptLanguage(): string {
  try {
    return localStorage.getItem(keptAs) ?? '';
  } catch {
    return '';
  }
}
