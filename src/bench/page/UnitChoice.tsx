import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { backTo } from './backTo.ts';

/** The unit of all lengths on the page; the card keeps it. @param id the same each time, since the page is laid out anew */
export function UnitChoice({ id, label }: { id: string; label: string }) {
  const inches = useBench(({ card }) => card.show_inches ?? false);
  return (
    <label className="field">
      <span>{label}</span>
      <select
        id={id}
        value={inches ? 'inch' : 'mm'}
        onChange={({ target }) => {
          editCard((card) => ({ ...card, show_inches: target.value === 'inch' || undefined }));
          requestAnimationFrame(() => backTo(id));
        }}
      >
        <option value="mm">{words.square.unitMm}</option>
        <option value="inch">{words.square.unitInch}</option>
      </select>
    </label>
  );
}
