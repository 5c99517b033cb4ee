import { readerCache, readerFiles, readerFolder, type ReaderFile } from './ocrFiles.ts';
import type { ReaderPlaces } from './ocr.ts';

/** A built worker lies in assets/, one folder below the page; the development server serves from the root. */
const home = import.meta.env.DEV ? '/' : '../';
const own = (name: ReaderFile) => new URL(`${home}${readerFolder}/${name}`, import.meta.url).href;

/** The reader's files beside the page, on its own origin. */
export function readerPlacesBrowser(): ReaderPlaces {
  return {
    languageFolder: new URL('.', own('core.js')).href.replace(/\/$/, ''),
    workerScript: own('worker.min.js'),
    core: own('core.js'),
  };
}

/** Keeps the files on this device once they were fetched, for the service worker to serve without a network. */
export async function keepReader(): Promise<void> {
  if (!('caches' in self)) return;
  const cache = await caches.open(readerCache);
  for (const name of readerFiles) if (!(await cache.match(own(name)))) await cache.add(own(name));
}
