import type { ReactNode } from 'react';
import type { PowerReport } from '../../power/index.ts';
import { benchWords } from '../../words/bench.ts';

interface Props {
  /** Id of the heading that names the table. */
  labelledBy: string;
  lamps: readonly { id: string }[];
  states: PowerReport['states'];
  /** Names of the states in which the cell is shorted. */
  shorted: ReadonlySet<string>;
  here?: string;
  name(state: string): ReactNode;
}

/** Lamp by state: lit, dim or dark, with the current. */
export function StateGrid({ labelledBy, lamps, states, shorted, here, name: say }: Props) {
  const { states: text } = benchWords;
  return (
    <div className="table-scroll" tabIndex={0} role="group" aria-labelledby={labelledBy}>
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
          {states.map(({ name, lamps: figures }) => (
            <tr key={name} className={name === here ? 'here' : undefined}>
              <th scope="row">
                {say(name)}
                {shorted.has(name) && <b className="shorted">{text.shorted}</b>}
              </th>
              {lamps.map(({ id }) => (
                <td key={id} className={figures[id]?.look ?? 'dark'}>
                  {text.looks[figures[id]?.look ?? 'dark']}
                  <small>{text.mA(figures[id]?.mA ?? 0)}</small>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
