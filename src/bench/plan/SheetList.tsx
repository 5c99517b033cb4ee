import type { Card, Flap } from '../../card/index.ts';
import type { Ring } from '../../geometry/index.ts';
import { length } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { editCard } from '../state/editCard.ts';
import type { Picked } from './picked.ts';
import { changeFlap, removePicked, setBeneath, stripsOf } from './planEdits.ts';

interface Props {
  card: Card;
  picked: Picked | undefined;
  pick(picked: Picked | undefined): void;
}

const uses: Flap['use'][] = ['cell', 'press', 'stroke'];

/** Patches and flaps: what runs beneath the one, what the other does when closed. */
export function SheetList({ card, picked, pick }: Props) {
  const { page: text } = planWords;
  if (card.patches.length + card.flaps.length === 0) return null;
  const line = (kind: 'patch' | 'flap', id: string, outline: Ring, body: React.ReactNode) => {
    const open = picked?.kind === kind && picked.id === id;
    const remove = () => {
      editCard((now) => removePicked(now, { kind, id }));
      pick(undefined);
    };
    return (
      <li key={`${kind} ${id}`} className={open ? 'open' : undefined}>
        <button
          type="button"
          className="part-head"
          aria-expanded={open}
          onClick={() => pick(open ? undefined : { kind, id })}
        >
          <b>{kind === 'patch' ? text.patch(id) : text.flap(id)}</b>
          <small>{sizeOf(outline)}</small>
        </button>
        {open && (
          <div className="part-body">
            {body}
            <div className="line-of-acts">
              <button type="button" onClick={remove}>
                {text.removePicked}
              </button>
            </div>
          </div>
        )}
      </li>
    );
  };
  return (
    <section aria-labelledby="plan-sheets">
      <h2 id="plan-sheets">{text.sheets}</h2>
      <ul className="part-list">
        {card.patches.map(({ id, outline, beneath }) =>
          line(
            'patch',
            id,
            outline,
            <fieldset>
              <legend>{text.beneath}</legend>
              {stripsOf(card).map((strip) => (
                <label key={strip.id} className="check">
                  <input
                    type="checkbox"
                    checked={beneath.some((each) => each.id === strip.id)}
                    onChange={({ target }) => editCard((now) => setBeneath(now, id, strip, target.checked))}
                  />
                  {strip.id}
                </label>
              ))}
            </fieldset>,
          ),
        )}
        {card.flaps.map(({ id, outline, use }) =>
          line(
            'flap',
            id,
            outline,
            <label className="field">
              <span>{text.flapUse}</span>
              <select
                value={use}
                onChange={({ target }) =>
                  editCard((now) => changeFlap(now, id, { use: target.value as Flap['use'] }))
                }
              >
                {uses.map((each) => (
                  <option key={each} value={each}>
                    {text.flapUses[each]}
                  </option>
                ))}
              </select>
            </label>,
          ),
        )}
      </ul>
    </section>
  );
}

function sizeOf(outline: Ring): string {
  const extent = (axis: 0 | 1) => {
    const places = outline.map((p) => p[axis]);
    return length(Math.max(...places) - Math.min(...places));
  };
  return planWords.page.patchLine(extent(0), extent(1));
}
