import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { ReaderPlaces } from './ocr.ts';

/** The reader's files where npm put them. */
export function readerPlacesNode(): ReaderPlaces {
  const require = createRequire(import.meta.url);
  const data = dirname(require.resolve('@tesseract.js-data/eng/package.json'));
  return { languageFolder: join(data, '4.0.0_best_int') };
}
