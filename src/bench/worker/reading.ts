import type { Card } from '../../card/index.ts';
import type { Checked } from '../../check/index.ts';
import type { ReadLabels } from '../../parts/labels/index.ts';

/** What was read; `stopped` where the maker did not wait for the rest. */
export type SheetRead = ReadLabels & { stopped: boolean };

let stop: (() => void) | undefined;

/** Leaves off reading: the call under way answers at once. */
export function stopReading(): void {
  stop?.();
}

/**
 * Reads the sheet of a check. The recogniser is fetched with the first reading and let go after each: it takes some
 * hundred megabytes of memory.
 * @param onShare told shares 0..1, the first quarter of them for fetching
 */
export async function readingOf(
  checked: Checked,
  card: Card,
  onShare: (share: number) => void = () => undefined,
): Promise<SheetRead> {
  let on = true;
  const stopped = new Promise<SheetRead>((resolve) => {
    stop = () => {
      on = false;
      resolve({ labels: [], upsideDown: false, stopped: true });
    };
  });
  const [{ openLineReader }, { keepReader, readerPlacesBrowser }, { readSheet }] = await Promise.all([
    import('../../engine/ocr.ts'),
    import('../../engine/ocrPlacesBrowser.ts'),
    import('../../check/labels/index.ts'),
  ]);
  const work = async (): Promise<SheetRead> => {
    const reader = await openLineReader(readerPlacesBrowser(), (share) => onShare(share / 4));
    // A device without room still reads.
    void keepReader().catch(() => undefined);
    try {
      const onProgress = (share: number) => onShare(0.25 + 0.75 * share);
      const read = await readSheet(checked, card, reader, { onProgress, goOn: () => on });
      return { ...read, stopped: !on };
    } finally {
      await reader.close();
    }
  };
  return Promise.race([work(), stopped]);
}
