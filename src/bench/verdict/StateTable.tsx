import type { PowerReport } from '../../power/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { sayState } from '../../words/states.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { PlayStroke } from './PlayStroke.tsx';
import { StateGrid } from './StateGrid.tsx';

interface Props {
  shown: Shown;
  power: PowerReport | undefined;
  state: string | undefined;
  setState(name: string | undefined): void;
}

/** Lamps by states: lit, dim or dark in words and shape, with the current. */
export function StateTable({ shown, power, state, setState }: Props) {
  const lamps = useBench(({ card }) => card.lamps);
  const { states: text } = words;
  const shorted = new Set(shown.netlist.states.filter((each) => each.shorted).map(({ name }) => name));
  return (
    <section aria-labelledby="states">
      <h2 id="states">{text.heading}</h2>
      {!power || lamps.length === 0 ? (
        <p className="pencil">{text.noLamps}</p>
      ) : (
        <>
          <PlayStroke names={power.states.map(({ name }) => name)} state={state} setState={setState} />
          <StateGrid
            labelledBy="states"
            lamps={lamps}
            states={power.states}
            shorted={shorted}
            here={state}
            name={(name) => (
              <button type="button" aria-pressed={name === state} onClick={() => setState(name)}>
                {sayState(name)}
              </button>
            )}
          />
        </>
      )}
    </section>
  );
}
