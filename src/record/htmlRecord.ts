import type { Card } from '../card/index.ts';
import type { PowerReport } from '../power/index.ts';
import { recordDocument } from './document/recordDocument.ts';
import { htmlOf } from './html.ts';
import type { Recordable, RecordImages } from './types.ts';

/** The record as one self-contained HTML page: no script, no request, pictures within. */
export function htmlRecord(
  checked: Recordable,
  power: PowerReport,
  card: Card,
  { images }: { images?: RecordImages } = {},
): string {
  return htmlOf(recordDocument(checked, power, card, images));
}
