import type { ReaderPlaces } from './ocr.ts';

/** A built worker lies in assets/, one folder below the page; the development server serves from the root. */
const folder = import.meta.env.DEV ? '/ocr/' : '../ocr/';

/** The reader's files beside the page, on its own origin. */
export function readerPlacesBrowser(): ReaderPlaces {
  const own = (name: string) => new URL(folder + name, import.meta.url).href;
  return {
    languageFolder: own('').replace(/\/$/, ''),
    workerScript: own('worker.min.js'),
    core: own('core.js'),
  };
}
