import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';
import { change } from '../state/store.ts';
import { removePart } from './partEdits.ts';

/** Takes a part off the sheet, and closes its line. */
export function RemovePart({ id }: { id: string }) {
  const remove = () => {
    editCard((card) => removePart(card, id));
    change({ part: undefined });
  };
  return (
    <>
      <button type="button" onClick={remove}>
        {words.parts.remove}
      </button>
      <button type="button" className="quiet" onClick={() => change({ part: undefined })}>
        {words.parts.done}
      </button>
    </>
  );
}
