import { cellKinds, type Cell } from '../../card/schema.ts';
import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';
import { changeCell } from './partEdits.ts';
import { PlaceFields } from './PlaceFields.tsx';
import { RemovePart } from './RemovePart.tsx';

/** The cell's kind, the face that looks up, its place. */
export function CellEditor({ cell }: { cell: Cell }) {
  const { parts: text } = words;
  const set = (part: Partial<Cell>) => editCard((card) => changeCell(card, part));
  return (
    <>
      <div className="fields">
        <label className="field">
          <span>{text.kind}</span>
          <select value={cell.kind} onChange={({ target }) => set({ kind: target.value as Cell['kind'] })}>
            {cellKinds.map((kind) => (
              <option key={kind}>{kind}</option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{text.up}</span>
          <select value={cell.up} onChange={({ target }) => set({ up: target.value as Cell['up'] })}>
            <option>+</option>
            <option value="-">−</option>
          </select>
        </label>
      </div>
      <PlaceFields legend={text.middle} at={cell.at} take={(at) => set({ at })} />
      <div className="line-of-acts">
        <RemovePart id="cell" />
      </div>
    </>
  );
}
