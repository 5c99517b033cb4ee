import type { DBSchema, IDBPDatabase } from 'idb';
import type { Card } from '../../card/index.ts';
import type { Outline } from '../../sheet/index.ts';
import type { KeptShot, StepName } from './types.ts';

/** A card as it lies on this device. */
export interface Kept {
  cardId: string;
  card: Card;
  photo?: KeptShot;
  /** Further shots of the same sheet. */
  again?: KeptShot[];
  step: StepName;
  outline?: Outline;
  /** ISO date and time. */
  at: string;
  /** Goes up by one with each writing, so that two tabs notice each other. */
  revision: number;
  /** The tab that wrote it. */
  writer?: string;
}

interface Shelf extends DBSchema {
  cards: { key: string; value: Kept; indexes: { at: string } };
}

let opening: Promise<IDBPDatabase<Shelf>> | undefined;

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opening ??= import('idb').then(({ openDB }) =>
    openDB<Shelf>('foilproof', 1, {
      upgrade: (db) => void db.createObjectStore('cards', { keyPath: 'cardId' }).createIndex('at', 'at'),
    }),
  );
  return opening;
}

/**
 * Writes a card, unless another tab has written it since. A tab's own writings may overtake what it knows of them.
 * @param seen the revision that this tab knows, 0 = none
 * @returns the new revision, or undefined where another tab was first
 * @throws DOMException QuotaExceededError where the device has no room
 */
export async function writeKept(entry: Omit<Kept, 'revision'>, seen: number): Promise<number | undefined> {
  const transaction = (await shelf()).transaction('cards', 'readwrite');
  const there = await transaction.store.get(entry.cardId);
  if (there && there.revision > seen && there.writer !== entry.writer) return undefined;
  const revision = (there?.revision ?? 0) + 1;
  await transaction.store.put({ ...entry, revision });
  await transaction.done;
  return revision;
}

/** A kept card by its id, or the one written last. */
export async function latestKept(cardId?: string): Promise<Kept | undefined> {
  const db = await shelf();
  if (cardId !== undefined) return db.get('cards', cardId);
  const newest = await db.transaction('cards').store.index('at').openCursor(null, 'prev');
  return newest?.value;
}

/** All kept cards, newest first. */
export async function allKept(): Promise<Kept[]> {
  return (await (await shelf()).getAllFromIndex('cards', 'at')).reverse();
}

export async function forget(cardId: string): Promise<void> {
  await (await shelf()).delete('cards', cardId);
}
