import type { ReaderPlaces } from './ocr.ts';

/** The reader's files beside the page, on its own origin. */
export function readerPlacesBrowser(): ReaderPlaces {
  const folder = new URL('ocr/', document.baseURI).href;
  return {
    languageFolder: folder,
    workerScript: `${folder}worker.min.js`,
    core: `${folder}core.js`,
  };
}
