import { benchWords as words } from '../../words/bench.ts';
import { languageNames, languages, type Language } from '../../words/language.ts';
import { editCard } from '../state/editCard.ts';
import { speakNow } from '../state/language.ts';
import { useBench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';

/** The language of the page and the unit of its lengths. */
export function Choices() {
  const language = useBench((state) => state.language);
  const inches = useBench(({ card }) => card.show_inches ?? false);
  const { choices } = words;
  return (
    <div className="fields choices">
      <label className="field">
        <span>{choices.language}</span>
        <select
          id="language"
          value={language}
          onChange={({ target }) =>
            void speakNow(target.value as Language)
              .then(() => backTo('language'))
              .catch(tellTrouble)
          }
        >
          {languages.map((each) => (
            <option key={each} value={each} lang={each}>
              {languageNames[each]}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{choices.unit}</span>
        <select
          id="unit"
          value={inches ? 'inch' : 'mm'}
          onChange={({ target }) => {
            editCard((card) => ({ ...card, show_inches: target.value === 'inch' || undefined }));
            requestAnimationFrame(() => backTo('unit'));
          }}
        >
          <option value="mm">{words.square.unitMm}</option>
          <option value="inch">{words.square.unitInch}</option>
        </select>
      </label>
    </div>
  );
}

/** The page was laid out anew: the hand goes back to where it was. */
function backTo(id: string): void {
  document.getElementById(id)?.focus();
}
