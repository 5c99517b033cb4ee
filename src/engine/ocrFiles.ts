/** The folder beside the page that holds the text recogniser's files. Its name goes with their version: it is kept on devices. */
export const readerFolder = 'ocr-7.0.0';

/** What its first use fetches, uncompressed; the build checks it. */
export const readerBytes = 6_970_000;

export const readerFiles = ['worker.min.js', 'core.js', 'eng.traineddata.gz'] as const;
export type ReaderFile = (typeof readerFiles)[number];

/** Where the service worker looks for them once they were fetched. */
export const readerCache = 'foilproof-reader';
