import type { Card } from '../../card/index.ts';
import { renewNow } from './renew.ts';
import { stageOf } from './stageOf.ts';
import { bench, change } from './store.ts';

/** Steps that can be undone. */
const mostSteps = 200;

/** Lays a changed card on the bench, to be undone as one step, and renews what hangs on the change. */
export function editCard(edit: (card: Card) => Card): void {
  const { card, past } = bench();
  const next = edit(card);
  if (next === card) return;
  change({ card: next, past: [...past, card].slice(-mostSteps), future: [] });
  renewFromChange(card, next);
}

/** Changes words of the card, letter by letter: nothing is renewed and the field has an undo of its own. */
export function reword(words: Partial<Pick<Card, 'title' | 'note'>>): void {
  change({ card: { ...bench().card, ...words } });
}

export function undo(): void {
  const { card, past, future } = bench();
  const before = past.at(-1);
  if (!before) return;
  change({ card: before, past: past.slice(0, -1), future: [card, ...future] });
  renewFromChange(card, before);
}

export function redo(): void {
  const { card, past, future } = bench();
  const [next] = future;
  if (!next) return;
  change({ card: next, past: [...past, card], future: future.slice(1) });
  renewFromChange(card, next);
}

function renewFromChange(before: Card, after: Card): void {
  const stage = stageOf(before, after);
  if (stage) renewNow(stage);
}
