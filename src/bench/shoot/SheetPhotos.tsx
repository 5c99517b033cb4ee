import { useId, useState } from 'react';
import type { Card } from '../../card/schema.ts';
import { foldWords as words } from '../../words/fold.ts';
import { length } from '../../words/lengths.ts';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { FileButton } from './FileButton.tsx';
import { addSheetPhoto, isSheetPhoto, pictureOf } from './sheetPhotos.ts';

/** Photographs of the card's other sheets: each flap opened flat, the base as it was before a patch. */
export function SheetPhotos({ accept }: { accept: string }) {
  const card = useBench((state) => state.card);
  const fates = useBench(({ shown }) => shown?.joined?.fates);
  const choices = sheetChoices(card);
  const [chosen, choose] = useState(choices[0]?.value ?? '');
  const list = useId();
  if (choices.length === 0) return null;
  const value = choices.some((each) => each.value === chosen) ? chosen : choices[0].value;
  const take = async (file: File) => {
    const picture = await pictureOf(file);
    editCard((before) => addSheetPhoto(before, value, picture));
  };
  return (
    <section aria-labelledby={list}>
      <h2 id={list}>{words.sheets.heading}</h2>
      <ul className="sheet-photos">
        {card.photos.map((photo, index) =>
          isSheetPhoto(photo) ? (
            <li key={index}>
              <span>{words.sheets.shows(photo.name, photo.sheet, photo.before)}</span>
              <span className="pencil">{fateOf(fates?.find(({ name }) => name === photo.name))}</span>
              <button
                type="button"
                onClick={() =>
                  editCard((now) => ({ ...now, photos: now.photos.filter((each) => each !== photo) }))
                }
              >
                {words.sheets.remove(photo.name)}
              </button>
            </li>
          ) : null,
        )}
      </ul>
      <label className="field">
        <span>{words.sheets.which}</span>
        <select value={value} onChange={({ target }) => choose(target.value)}>
          {choices.map((each) => (
            <option key={each.value} value={each.value}>
              {each.label}
            </option>
          ))}
        </select>
      </label>
      <FileButton label={words.sheets.add} accept={accept} take={(file) => void take(file)} />
    </section>
  );
}

function sheetChoices({ flaps, patches }: Card): { value: string; label: string }[] {
  return [
    ...flaps.map(({ id }) => ({ value: `flap ${id}`, label: words.sheets.flap(id) })),
    ...patches.map(({ id }) => ({ value: `before ${id}`, label: words.sheets.before(id) })),
  ];
}

function fateOf(fate: { by: 'corners' | 'fold' | 'copper'; residualMm: number } | undefined): string {
  return fate ? words.sheets.laid(words.offRegister.by[fate.by], length(fate.residualMm)) : '';
}
