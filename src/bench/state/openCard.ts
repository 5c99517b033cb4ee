import type { Card } from '../../card/index.ts';
import type { SavedPhoto } from '../../card/saved.ts';
import { emptyCard } from './emptyBench.ts';
import { goAlong } from './goTo.ts';
import { bench, change } from './store.ts';
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
    again: undefined,
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
  cardWith({ ...emptyCard(), show_inches: bench().card.show_inches });
  change({ step: 'shoot' });
}

/** Opens a card file. One that is wrong is refused with the key that is wrong, and the card on the bench stays. */
export async function openCardFile(file: File): Promise<void> {
  try {
    const { openCardText } = await import('../../card/saved.ts');
    const { card, photo, again } = openCardText(await file.text(), file.name);
    cardWith(card);
    goAlong(photo ? 'verdict' : 'shoot');
    const dated = (saved: SavedPhoto) => ({ ...saved, taken: saved.taken ?? new Date().toISOString() });
    if (photo) await reopenPhoto(dated(photo), { again: again.map(dated) });
  } catch (error) {
    tellTrouble(error);
  }
}
