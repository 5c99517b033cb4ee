import type { Card } from '../../card/index.ts';
import type { LineReader } from '../../engine/ocr.ts';
import { readLabels } from '../../parts/labels/index.ts';
import type { KnownNames, Reading, ReadLabels } from '../../parts/labels/index.ts';
import { readTag } from '../../plan/index.ts';
import type { Checked } from '../types.ts';
import { notPaper } from './notPaper.ts';

/** Reads what is printed or written on the base of a check. Nothing of it counts until the maker takes it. */
export function readSheet(
  { sheet, seen, suggested }: Pick<Checked, 'sheet' | 'seen' | 'suggested'>,
  card: Card,
  reader: LineReader,
  reading?: Reading,
): Promise<ReadLabels> {
  return readLabels(sheet, notPaper(seen, card, suggested), reader, namesOf(card), reading);
}

function namesOf({ lamps, plan, contacts, patches, flaps }: Card): KnownNames {
  const ids = (parts: readonly { id: string }[] = []) => parts.map(({ id }) => id);
  return {
    lamps: [...new Set([...ids(lamps), ...ids(plan?.lamps)])],
    others: [...ids(contacts), ...ids(patches), ...ids(flaps), ...ids(plan?.holes)],
    tagIn,
  };
}

/** A plan's tag in its own spelling. */
function tagIn(text: string): string | undefined {
  const tag = readTag(text);
  return tag && `FP ${tag.widthMm}x${tag.heightMm} ${tag.signs}`;
}
