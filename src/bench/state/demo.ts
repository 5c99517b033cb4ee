import { goAlong } from './goTo.ts';
import { quietly } from './keep.ts';
import { cardWith } from './openCard.ts';
import { reopenPhoto } from './takePhoto.ts';

/** Lays the demo card on the bench: Harbour Night, half-built, with a break and a lamp the wrong way round. */
export async function openDemo(): Promise<void> {
  const [{ default: photoUrl }, { default: text }, { parseCard }] = await Promise.all([
    import('../../../fixtures/gap-and-reversed.jpg?url'),
    import('../../../fixtures/gap-and-reversed.card.json?raw'),
    import('../../card/index.ts'),
  ]);
  const card = parseCard(text, 'harbour-night.card.json');
  await quietly(card, async () => {
    cardWith(card);
    goAlong('verdict');
    const response = await fetch(photoUrl);
    const file = await response.blob();
    await reopenPhoto({ name: 'harbour-night.jpg', file, taken: new Date().toISOString() });
  });
}
