import type { PlanStrip } from '../../card/index.ts';
import { planWords } from '../../words/plan.ts';
import { LengthField } from '../page/LengthField.tsx';
import { PlaceFields } from '../parts/PlaceFields.tsx';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { NetField } from './NetField.tsx';
import type { Picked } from './picked.ts';
import { changeStrip, moveCorner, moveStrip, removeCorner, removeStrip } from './planEdits.ts';

interface Props {
  strip: PlanStrip;
  corner: number | undefined;
  pick(picked: Picked | undefined): void;
}

/** A strip's net, width, place in the order, and each of its places by numbers. */
export function StripEditor({ strip, corner, pick }: Props) {
  const { page: text } = planWords;
  const { id, net, width_mm, path } = strip;
  const flaps = useBench(({ card }) => card.flaps);
  const set = (part: Partial<PlanStrip>) => editCard((card) => changeStrip(card, id, part));
  const remove = () => {
    editCard((card) => removeStrip(card, id));
    pick(undefined);
  };
  return (
    <>
      <div className="fields">
        <NetField net={net} take={(value) => set({ net: value })} />
        <LengthField
          label={text.width}
          mm={width_mm}
          leastMm={0.5}
          mostMm={50}
          take={(value) => set({ width_mm: value })}
        />
        {flaps.length > 0 && (
          <label className="field">
            <span>{text.liesOn}</span>
            <select value={strip.on} onChange={({ target }) => set({ on: target.value })}>
              <option value="base">{text.onBase}</option>
              {flaps.map((flap) => (
                <option key={flap.id} value={flap.id}>
                  {text.onFlap(flap.id)}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      <details open={corner !== undefined || undefined}>
        <summary>{text.corners}</summary>
        {path.map((at, k) => (
          <div key={k} className={k === corner ? 'plan-place here' : 'plan-place'}>
            <PlaceFields
              legend={text.corner(k + 1)}
              at={at}
              take={(to) => editCard((card) => moveCorner(card, id, k, to))}
            />
            {path.length > 2 && (
              <button
                type="button"
                className="quiet"
                onClick={() => editCard((card) => removeCorner(card, id, k))}
              >
                {text.cornerRemove(k + 1)}
              </button>
            )}
          </div>
        ))}
      </details>
      <div className="line-of-acts">
        <button type="button" onClick={() => editCard((card) => moveStrip(card, id, -1))}>
          {text.earlier}
        </button>
        <button type="button" onClick={() => editCard((card) => moveStrip(card, id, 1))}>
          {text.later}
        </button>
        <button type="button" onClick={remove}>
          {text.removeStrip}
        </button>
      </div>
    </>
  );
}
