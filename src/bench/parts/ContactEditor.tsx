import type { Contact } from '../../card/schema.ts';
import { contactPlace, sidesOf } from '../../parts/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { LengthField } from '../page/LengthField.tsx';
import { NumberField } from '../page/NumberField.tsx';
import { editCard } from '../state/editCard.ts';
import { NameField } from './NameField.tsx';
import { changeContact, pair } from './partEdits.ts';
import { PlaceFields } from './PlaceFields.tsx';
import { RemovePart } from './RemovePart.tsx';

/** How a contact is closed, its number in a stroke, where its sides lie. */
export function ContactEditor({ contact }: { contact: Contact }) {
  const { parts: text } = words;
  const { id, how } = contact;
  const set = (part: Partial<Contact>) => editCard((card) => changeContact(card, id, part));
  const sides = sidesOf(contact);
  return (
    <>
      <div className="fields">
        <NameField id={id} />
        <label className="field">
          <span>{text.how}</span>
          <select value={how} onChange={({ target }) => set(closed(target.value as Contact['how'], contact))}>
            <option value="press">{text.hows.press}</option>
            <option value="stroke">{text.hows.stroke}</option>
          </select>
        </label>
        {how === 'stroke' && (
          <NumberField
            label={text.order}
            value={contact.order ?? 1}
            digits={0}
            least={1}
            most={999}
            take={(order) => set({ order: Math.round(order) })}
          />
        )}
        {!sides && (
          <LengthField
            label={text.reach}
            mm={contact.reach_mm}
            leastMm={0.5}
            mostMm={200}
            take={(reach_mm) => set({ reach_mm })}
          />
        )}
      </div>
      {sides ? (
        <>
          <PlaceFields legend={text.from} at={sides[0]} take={(at) => set({ at: [at, pair(sides[1])] })} />
          <PlaceFields legend={text.to} at={sides[1]} take={(at) => set({ at: [pair(sides[0]), at] })} />
        </>
      ) : (
        <PlaceFields legend={text.middle} at={contactPlace(contact)} take={(at) => set({ at })} />
      )}
      <div className="line-of-acts">
        <RemovePart id={id} />
      </div>
    </>
  );
}

/** Only a stroke has an order. */
function closed(how: Contact['how'], { order }: Contact): Partial<Contact> {
  return how === 'stroke' ? { how, order: order ?? 1 } : { how, order: undefined };
}
