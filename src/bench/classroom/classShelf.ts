import type { DBSchema, IDBPDatabase } from 'idb';
import type { ClassCard } from './classroom.ts';

interface ClassShelf extends DBSchema {
  cards: { key: string; value: ClassCard & { place: number }; indexes: { place: number } };
}

let opening: Promise<IDBPDatabase<ClassShelf>> | undefined;

/** A store of its own: a change of its shape never waits for a tab that still has the cards' one open. */
function shelf(): Promise<IDBPDatabase<ClassShelf>> {
  opening ??= import('idb').then(({ openDB }) =>
    openDB<ClassShelf>('foilproof-class', 1, {
      upgrade: (db) => void db.createObjectStore('cards', { keyPath: 'id' }).createIndex('place', 'place'),
    }),
  );
  return opening;
}

/**
 * Keeps a card of the class on this device; its photograph goes once it is checked.
 * @param place in the list, from 0
 * @throws DOMException QuotaExceededError where the device has no room
 */
export async function keepOfClass(card: ClassCard, place: number): Promise<void> {
  await (await shelf()).put('cards', { ...card, place });
}

/** The class as it was kept, in the order in which its cards came. */
export async function keptClass(): Promise<ClassCard[]> {
  const kept = await (await shelf()).getAllFromIndex('cards', 'place');
  return kept.map(({ place: _place, ...card }) => card);
}

export async function dropClass(): Promise<void> {
  await (await shelf()).clear('cards');
}
