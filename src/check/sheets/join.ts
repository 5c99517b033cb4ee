import type { Card } from '../../card/index.ts';
import { lampOver } from '../../net/covered.ts';
import { compose, type Laid, type Seen } from './compose.ts';
import { patchSeams } from './patchSeams.ts';
import { recall } from './recall.ts';
import { rightSide } from './foldSide.ts';
import { register } from './register.ts';
import type { JoinedSheets, ReadSheet, SheetFate } from './types.ts';

/**
 * Lays all sheets of a card together in the base's frame.
 * @param base the base as it is now
 * @param reads further photographs, each in its own frame
 */
export function joinSheets(
  base: Seen,
  reads: readonly ReadSheet[],
  card: Card,
): Seen & { joined: JoinedSheets } {
  const laid = reads.map((read): Laid => ({ read, registration: register(read, base.seen, card) }));
  const isFlap = ({ read: { given } }: Laid) => given.sheet !== 'base' || given.fold_of !== undefined;
  const earlier = laid.filter((each) => !isFlap(each));
  const beneath: JoinedSheets['beneath'] = {};
  const seams: JoinedSheets['seams'] = [];
  for (const patch of card.patches) {
    const before = lastBefore(earlier, patch.id, card);
    if (!before) continue;
    Object.assign(beneath, recall(before, [patch]));
    // Beneath a lamp two photographs differ by the lamp itself.
    seams.push(...patchSeams(base.seen, before, patch).filter((at) => !lampOver(card, at)));
  }
  const { laid: hinged, wrongSide } = rightSide(laid.filter(isFlap), card);
  const composed = compose(base, hinged, card);
  const flaps = card.flaps
    .filter(({ id }) => laid.some(({ read: { given } }) => given.sheet === id || given.fold_of === id))
    .map(({ id }) => id);
  return { ...composed, joined: { fates: laid.map(fateOf), beneath, seams, flaps, wrongSide } };
}

/** The last earlier photograph of the base that does not yet show the patch. */
function lastBefore(earlier: readonly Laid[], patch: string, { photos }: Card): Laid | undefined {
  const own = earlier.findLast(({ read: { given } }) => given.before === patch);
  if (own) return own;
  const order = photos.filter(({ sheet }) => sheet === 'base');
  const laidIn = order.findIndex(({ after }) => after === patch);
  return earlier
    .filter(({ read: { given } }) => given.after !== patch)
    .filter(({ read: { given } }) => laidIn < 0 || order.indexOf(given) < laidIn)
    .at(-1);
}

function fateOf({ read, registration: { by, residualMm, at } }: Laid): SheetFate {
  const { given, outline, seen } = read;
  return {
    name: given.name,
    sheet: given.fold_of ?? given.sheet,
    by,
    residualMm,
    at,
    cornersPx: outline.cornersPx,
    outlineCertainty: outline.certainty,
    readable: seen.readable,
  };
}
