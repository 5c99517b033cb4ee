import type { Card } from '../../card/index.ts';
import type { Finding, Verdict } from '../../net/index.ts';
import { FoilproofError } from '../../words/error.ts';
import { bench, change } from '../state/store.ts';
import { tellNotKept } from '../state/tellNotKept.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';
import { dropClass, keepOfClass, keptClass } from './classShelf.ts';

/** One of many cards of a plan: waiting, checked, or with the reason why it could not be. */
export interface ClassCard {
  id: string;
  name: string;
  /** Let go once the card is checked, so that memory stays flat. */
  file?: Blob;
  verdict?: Verdict;
  findings: Finding[];
  why?: string;
}

let running = false;

/** Puts a photograph in the queue and goes through it, one after another. */
export function addToClass(name: string, file: Blob): void {
  const card: ClassCard = { id: crypto.randomUUID(), name, file, findings: [] };
  change({ classroom: [...bench().classroom, card] });
  keep(card);
  void goOn();
}

/** Stops after the card in hand. */
export function stopClass(): void {
  running = false;
  change({ classBusy: false });
}

export function forgetClass(): void {
  stopClass();
  change({ classroom: [] });
  dropClass().catch(tellTrouble);
}

/** Brings back the class that was kept on this device. What still waits goes on when the maker says so. */
export async function restoreClass(): Promise<void> {
  const kept = await keptClass().catch(() => []);
  if (kept.length > 0) change({ classroom: [...kept, ...bench().classroom] });
}

function keep(card: ClassCard): void {
  const place = bench().classroom.findIndex(({ id }) => id === card.id);
  keepOfClass(card, place).catch(tellNotKept);
}

/** Checks what still waits. A photograph that cannot be checked says why, and the next one is taken. */
export async function goOn(): Promise<void> {
  if (running) return;
  running = true;
  change({ classBusy: true });
  while (running) {
    const next = bench().classroom.find(({ file }) => file !== undefined);
    if (!next?.file) break;
    const { name, file } = next;
    const outcome = await call('classCheck', { card: planOf(bench().card), name, file }).catch(reason);
    settle(next.id, outcome);
  }
  running = false;
  change({ classBusy: false });
}

function settle(id: string, outcome: Partial<ClassCard>): void {
  const card = bench().classroom.find((each) => each.id === id);
  if (!card) return;
  const done = { ...card, ...outcome, file: undefined };
  change({ classroom: bench().classroom.map((each) => (each === card ? done : each)) });
  keep(done);
}

function reason(error: unknown): Partial<ClassCard> {
  return { why: error instanceof FoilproofError ? error.message : String(error) };
}

/** What all cards share: of one photograph's corners, strokes and checks by hand nothing goes to the others. */
function planOf({ corners_px: _own, ...card }: Card): Card {
  return { ...card, photos: [], touch_up: [], teach: { copper: [], paper: [] }, checked: [], joins: [] };
}
