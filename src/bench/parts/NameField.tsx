import { useId, useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';
import { bench, change } from '../state/store.ts';
import { isTaken, renamePart } from './partEdits.ts';

/** A part's name; one that is taken already is refused. */
export function NameField({ id }: { id: string }) {
  const [typed, setTyped] = useState<string>();
  const hint = useId();
  const wish = (typed ?? id).trim();
  const taken = wish !== id && isTaken(bench().card, wish);
  const commit = () => {
    setTyped(undefined);
    if (wish === '' || wish === id || taken) return;
    editCard((card) => renamePart(card, id, wish));
    change({ part: wish });
  };
  return (
    <label className="field">
      <span>{words.parts.id}</span>
      <input
        type="text"
        value={typed ?? id}
        maxLength={40}
        aria-invalid={taken}
        aria-describedby={taken ? hint : undefined}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={commit}
        onKeyDown={({ key }) => key === 'Enter' && commit()}
      />
      {taken && (
        <small id={hint} role="alert">
          {words.parts.idTaken(wish)}
        </small>
      )}
    </label>
  );
}
