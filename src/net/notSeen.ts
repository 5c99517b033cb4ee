import type { Card } from '../card/index.ts';
import type { Traced } from '../trace/index.ts';
import { findingWords as words } from '../words/findings.ts';
import { length } from '../words/lengths.ts';

/** No photograph shows finer gaps than this, mm: where this one shows less, it is said. */
const fineMm = 0.25;

/** What no photograph shows, or this one does not: listed, never passed. */
export function notSeen(traced: Traced, card: Card): string[] {
  const said: string[] = [words.notSeen.joints, words.notSeen.parts];
  if (card.patches.length > 0) said.unshift(words.notSeen.patches);
  if (card.lamps.length > 0 || card.cell) said.push(words.notSeen.covered);
  if (!card.cell) said.push(words.notSeen.noCell);
  else if (!card.cell.upper_contact && !card.flaps.some(({ use }) => use === 'cell'))
    said.push(words.notSeen.upperFace);
  if (card.flaps.length > 0 || card.contacts.length > 0) said.push(words.notSeen.contacts);
  if (traced.smallestGapMm > fineMm) said.push(words.notSeen.fineGaps(length(traced.smallestGapMm)));
  return said;
}
