import { useEffect, useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { layOut } from '../state/keep.ts';
import { allKept, forget, type Kept } from '../state/shelf.ts';
import { useBench } from '../state/store.ts';

/** Cards that lie on this device, to go on with or to forget. */
export function KeptCards() {
  const here = useBench(({ cardId }) => cardId);
  const keptAt = useBench(({ kept }) => kept?.at);
  const [cards, setCards] = useState<Kept[]>([]);
  useEffect(() => {
    let wanted = true;
    allKept().then(
      (all) => wanted && setCards(all),
      () => undefined,
    );
    return () => void (wanted = false);
  }, [keptAt]);
  const others = cards.filter(({ cardId }) => cardId !== here);
  if (others.length === 0) return null;
  const drop = (cardId: string) =>
    void forget(cardId).then(() => setCards(cards.filter((card) => card.cardId !== cardId)));
  return (
    <>
      <h2>{words.shoot.kept}</h2>
      <ul className="kept">
        {others.map((kept) => (
          <li key={kept.cardId}>
            <button type="button" className="as-line" onClick={() => void layOut(kept)}>
              {kept.card.title ?? words.untitled}
              <small>{words.shoot.keptLine(kept.at.slice(0, 10), kept.card.lamps.length)}</small>
            </button>
            <button
              type="button"
              className="quiet"
              aria-label={words.shoot.forgetWhich(kept.card.title ?? words.untitled)}
              onClick={() => drop(kept.cardId)}
            >
              {words.shoot.forget}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
