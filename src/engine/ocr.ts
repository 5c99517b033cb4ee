import tesseract from 'tesseract.js';

/** A grey picture, row-major, 8 bits, width*height; dark ink on light paper. */
export interface GreyPicture {
  width: number;
  height: number;
  grey: Uint8Array;
}

/** Where the reader's own files lie; all of them on our own origin or disk. */
export interface ReaderPlaces {
  /** Folder or URL that holds eng.traineddata.gz. */
  languageFolder: string;
  workerScript?: string;
  core?: string;
}

export interface ReadLine {
  text: string;
  /** 0..1, as the recogniser gives it. */
  certainty: number;
}

export interface LineReader {
  /** Reads one printed line; `allowed` limits the characters. */
  read(picture: GreyPicture, allowed?: string): Promise<ReadLine>;
  close(): Promise<void>;
}

/**
 * Starts the text recogniser, wholly local.
 *
 * @param onProgress called with 0..1 while it loads
 * @throws Error when its files cannot be read
 */
export async function openLineReader(
  places: ReaderPlaces,
  onProgress: (done: number) => void = () => {},
): Promise<LineReader> {
  const worker = await tesseract.createWorker('eng', tesseract.OEM.LSTM_ONLY, {
    langPath: places.languageFolder,
    cacheMethod: 'none',
    ...(places.workerScript ? { workerPath: places.workerScript, workerBlobURL: false } : {}),
    ...(places.core ? { corePath: places.core } : {}),
    logger: (message) => onProgress(message.progress),
  });
  return {
    async read(picture, allowed = '') {
      await worker.setParameters({
        tessedit_pageseg_mode: tesseract.PSM.SINGLE_LINE,
        tessedit_char_whitelist: allowed,
      });
      const { data } = await worker.recognize(greyMap(picture) as unknown as tesseract.ImageLike);
      return { text: data.text.trim(), certainty: data.confidence / 100 };
    },
    async close() {
      await worker.terminate();
    },
  };
}

/** A binary portable grey map (Netpbm "P5"), the plainest file that the recogniser takes. */
function greyMap({ width, height, grey }: GreyPicture): Uint8Array {
  const head = new TextEncoder().encode(`P5\n${width} ${height}\n255\n`);
  const file = new Uint8Array(head.length + grey.length);
  file.set(head);
  file.set(grey, head.length);
  return file;
}
