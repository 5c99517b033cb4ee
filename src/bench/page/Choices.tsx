import { benchWords as words } from '../../words/bench.ts';
import { languageNames, languages, type Language } from '../../words/language.ts';
import { speakNow } from '../state/language.ts';
import { useBench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import { backTo } from './backTo.ts';
import { UnitChoice } from './UnitChoice.tsx';

/** The language of the page and the unit of its lengths. */
export function Choices() {
  const language = useBench((state) => state.language);
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
      <UnitChoice id="unit" label={choices.unit} />
    </div>
  );
}
