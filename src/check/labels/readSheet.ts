import type { Card } from '../../card/index.ts';
import type { LineReader } from '../../engine/ocr.ts';
import { readCellMarking, readLabels } from '../../parts/labels/index.ts';
import type { KnownNames, Reading, ReadLabels } from '../../parts/labels/index.ts';
import { readTag, sheetTag } from '../../plan/index.ts';
import type { Checked } from '../types.ts';
import { cellFace } from './cellFace.ts';
import { notPaper } from './notPaper.ts';

/** What of the work is reading the paper; the rest is reading the cell. */
const paperShare = 0.8;

/**
 * Reads what is printed or written on the base of a check, and the marking on the cell's face where one lies in view.
 * Nothing of it counts until the maker takes it.
 */
export async function readSheet(
  { sheet, seen, suggested }: Pick<Checked, 'sheet' | 'seen' | 'suggested'>,
  card: Card,
  reader: LineReader,
  { onProgress = () => {}, goOn = () => true }: Reading = {},
): Promise<ReadLabels> {
  const onPaper = { goOn, onProgress: (share: number) => onProgress(paperShare * share) };
  const read = await readLabels(sheet, notPaper(seen, card, suggested), reader, namesOf(card), onPaper);
  const face = read.upsideDown ? undefined : cellFace(card, suggested);
  const marking =
    face && goOn() ? await readCellMarking(sheet, face.disc, reader, face.fits, goOn) : undefined;
  onProgress(1);
  return marking ? { ...read, labels: [...read.labels, marking] } : read;
}

function namesOf(card: Card): KnownNames {
  const { lamps, plan, contacts, patches, flaps } = card;
  const ids = (parts: readonly { id: string }[] = []) => parts.map(({ id }) => id);
  return {
    lamps: [...new Set([...ids(lamps), ...ids(plan?.lamps)])],
    others: [...ids(contacts), ...ids(patches), ...ids(flaps), ...ids(plan?.holes)],
    ...(plan ? { tag: sheetTag(card) } : {}),
    tagIn,
  };
}

/** A plan's tag in its own spelling. */
function tagIn(text: string): string | undefined {
  const tag = readTag(text);
  return tag && `FP ${tag.widthMm}x${tag.heightMm} ${tag.signs}`;
}
