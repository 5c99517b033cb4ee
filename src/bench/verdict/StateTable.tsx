import type { PowerReport } from '../../power/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { sayState } from '../../words/states.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { PlayStroke } from './PlayStroke.tsx';

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
          <div className="table-scroll" tabIndex={0} role="group" aria-labelledby="states">
            <table className="states">
              <thead>
                <tr>
                  <th scope="col">{text.state}</th>
                  {lamps.map(({ id }) => (
                    <th key={id} scope="col">
                      {id}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {power.states.map(({ name, lamps: figures }) => (
                  <tr key={name} className={name === state ? 'here' : undefined}>
                    <th scope="row">
                      <button type="button" aria-pressed={name === state} onClick={() => setState(name)}>
                        {sayState(name)}
                      </button>
                      {shorted.has(name) && <b className="shorted">{text.shorted}</b>}
                    </th>
                    {lamps.map(({ id }) => (
                      <Cell key={id} look={figures[id]?.look ?? 'dark'} mA={figures[id]?.mA ?? 0} />
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </section>
  );
}

function Cell({ look, mA }: { look: 'lit' | 'dim' | 'dark'; mA: number }) {
  return (
    <td className={look}>
      {words.states.looks[look]}
      <small>{words.states.mA(mA)}</small>
    </td>
  );
}
