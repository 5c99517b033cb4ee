import { lampColours, type Card, type Lamp } from '../../card/schema.ts';
import { benchWords as words } from '../../words/bench.ts';
import { NumberField } from '../page/NumberField.tsx';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { NameField } from './NameField.tsx';
import { OwnLamp } from './OwnLamp.tsx';
import { changeLamp, flipLamp } from './partEdits.ts';
import { PlaceFields } from './PlaceFields.tsx';
import { RemovePart } from './RemovePart.tsx';

/** A lamp's colour, ends, resistor, and when it is meant to light. */
export function LampEditor({ lamp }: { lamp: Lamp }) {
  const contacts = useBench(({ card }) => card.contacts);
  const { parts: text } = words;
  const set = (part: Partial<Lamp>) => editCard((card: Card) => changeLamp(card, lamp.id, part));
  const intent = typeof lamp.intent === 'object' ? `by ${lamp.intent.contact}` : (lamp.intent ?? '');
  const setIntent = (value: string) =>
    set({ intent: value === '' ? undefined : value === 'always' ? value : { contact: value.slice(3) } });
  return (
    <>
      <div className="fields">
        <NameField id={lamp.id} />
        <label className="field">
          <span>{text.colour}</span>
          <select
            value={lamp.colour}
            onChange={({ target }) => set({ colour: target.value as Lamp['colour'] })}
          >
            {lampColours.map((colour) => (
              <option key={colour} value={colour}>
                {text.colours[colour]}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{text.intent}</span>
          <select value={intent} onChange={({ target }) => setIntent(target.value)}>
            <option value="">{text.intentUnsaid}</option>
            <option value="always">{text.intentAlways}</option>
            {contacts.map(({ id }) => (
              <option key={id} value={`by ${id}`}>
                {text.intentBy(id)}
              </option>
            ))}
          </select>
        </label>
        <NumberField
          label={text.series}
          value={lamp.series_ohm}
          digits={1}
          least={0}
          most={1e6}
          take={(series_ohm) => set({ series_ohm })}
        />
        <OwnLamp forward={lamp.forward} take={(forward) => set({ forward })} />
      </div>
      <PlaceFields legend={text.plus} at={lamp.plus} take={(plus) => set({ plus })} />
      <PlaceFields legend={text.minus} at={lamp.minus} take={(minus) => set({ minus })} />
      <div className="line-of-acts">
        <button type="button" onClick={() => editCard((card) => flipLamp(card, lamp.id))}>
          {text.flip}
        </button>
        <RemovePart id={lamp.id} />
      </div>
    </>
  );
}
