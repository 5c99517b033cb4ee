import type { Lamp } from '../../card/schema.ts';
import { benchWords } from '../../words/bench.ts';
import { NumberField } from '../page/NumberField.tsx';

interface Props {
  forward: Lamp['forward'];
  take(forward: Lamp['forward']): void;
}

/** What a common white lamp has, to begin from. */
const begin = { volt: 2.9, mA: 5 };

/** A lamp of the maker's own: its forward voltage at a current, in place of its colour's usual values. */
export function OwnLamp({ forward, take }: Props) {
  const { own } = benchWords.parts;
  return (
    <>
      <label className="field">
        <span>{own.label}</span>
        <input
          type="checkbox"
          checked={forward !== undefined}
          onChange={({ target }) => take(target.checked ? begin : undefined)}
        />
      </label>
      {forward && (
        <>
          <NumberField
            label={own.volt}
            value={forward.volt}
            digits={2}
            least={0.5}
            most={6}
            take={(volt) => take({ ...forward, volt })}
          />
          <NumberField
            label={own.mA}
            value={forward.mA}
            digits={2}
            least={0.1}
            most={100}
            take={(mA) => take({ ...forward, mA })}
          />
        </>
      )}
    </>
  );
}
