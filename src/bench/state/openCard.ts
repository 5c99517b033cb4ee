import type { Card } from '../../card/index.ts';
import { emptyCard } from './emptyBench.ts';
import { change } from './store.ts';
import { reopenPhoto } from './takePhoto.ts';
import { tellTrouble } from './trouble.ts';

/** Lays a card on the bench in place of the one there, which stays kept on the device. */
export function cardWith(card: Card, cardId: string = crypto.randomUUID()): void {
  change({
    cardId,
    card,
    past: [],
    future: [],
    shot: undefined,
    shown: undefined,
    busy: undefined,
    mark: undefined,
    part: undefined,
    kept: undefined,
    notice: undefined,
  });
}

/** A new card, with nothing on it. */
export function newCard(): void {
  cardWith(emptyCard());
  change({ step: 'shoot' });
}

/** Opens a card file. One that is wrong is refused with the key that is wrong, and the card on the bench stays. */
export async function openCardFile(file: File): Promise<void> {
  try {
    const { openCardText } = await import('../../card/saved.ts');
    const { card, photo } = openCardText(await file.text(), file.name);
    cardWith(card);
    change({ step: photo ? 'verdict' : 'shoot' });
    if (photo) await reopenPhoto(photo.file, photo.name, photo.taken ?? new Date().toISOString());
  } catch (error) {
    tellTrouble(error);
  }
}
