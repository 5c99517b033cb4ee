import { useId, useState } from 'react';
import { foldWords as words } from '../../words/fold.ts';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { FileButton } from './FileButton.tsx';
import { SheetFateLine } from './SheetFateLine.tsx';
import { addSheetPhoto, isSheetPhoto, pictureOf, showable, type Shows } from './sheetPhotos.ts';

interface Props {
  accept: string;
  /** Opens a photograph to have its sheet placed on it. */
  place(name: string): void;
}

/** Photographs of the card's other sheets: each flap opened flat, a folded base's inside, the base before a patch. */
export function SheetPhotos({ accept, place }: Props) {
  const card = useBench((state) => state.card);
  const choices = showable(card);
  const [chosen, choose] = useState(0);
  const list = useId();
  if (choices.length === 0) return null;
  const shows = choices[Math.min(chosen, choices.length - 1)];
  const take = async (file: File) => {
    const picture = await pictureOf(file);
    editCard((before) => addSheetPhoto(before, shows, picture));
  };
  return (
    <section aria-labelledby={list}>
      <h2 id={list}>{words.sheets.heading}</h2>
      <ul className="sheet-photos">
        {card.photos.map((photo, index) =>
          isSheetPhoto(photo) ? (
            <li key={index}>
              <span>
                {photo.name}: {labelOf(photo)}
              </span>
              <SheetFateLine name={photo.name} />
              <div className="line-of-acts">
                <button type="button" onClick={() => place(photo.name)}>
                  {words.sheets.place(photo.name)}
                </button>
                <button
                  type="button"
                  onClick={() =>
                    editCard((now) => ({ ...now, photos: now.photos.filter((each) => each !== photo) }))
                  }
                >
                  {words.sheets.remove(photo.name)}
                </button>
              </div>
            </li>
          ) : null,
        )}
      </ul>
      <label className="field">
        <span>{words.sheets.which}</span>
        <select value={choices.indexOf(shows)} onChange={({ target }) => choose(Number(target.value))}>
          {choices.map((each, k) => (
            <option key={k} value={k}>
              {labelOf(each)}
            </option>
          ))}
        </select>
      </label>
      <FileButton label={words.sheets.add} accept={accept} take={(file) => void take(file)} />
    </section>
  );
}

function labelOf({ sheet, before, fold_of }: Shows): string {
  if (fold_of !== undefined) return words.sheets.spread(fold_of);
  return before === undefined ? words.sheets.flap(sheet) : words.sheets.before(before);
}
