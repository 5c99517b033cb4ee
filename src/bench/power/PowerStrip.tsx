import { useState } from 'react';
import type { LampColour } from '../../card/index.ts';
import { powerStripWords as words } from '../../words/powerStrip.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { LampRow } from './LampRow.tsx';
import { busiest } from './busiest.ts';
import { PowerLines } from './PowerLines.tsx';
import { usePower } from './usePower.ts';
import './power.css';

interface Props {
  shown: Shown;
  state: string | undefined;
  setState(name: string): void;
}

/** The lamps as bright as they would look in a state, at a charge of the cell that the maker slides. */
export function PowerStrip({ shown, state, setState }: Props) {
  const lamps = useBench(({ card }) => card.lamps);
  const cell = useBench(({ card }) => card.cell);
  const [charge, setCharge] = useState(cell?.charge ?? 1);
  const { report, full } = usePower(shown, charge);
  const name = state ?? (report && busiest(report));
  const now = report?.states.find((each) => each.name === name);
  return (
    <section aria-labelledby="power" className="power">
      <h2 id="power">{words.heading}</h2>
      {!cell || lamps.length === 0 || !report || !now ? (
        <p className="pencil">{!cell || lamps.length === 0 ? words.noLamps : words.working}</p>
      ) : (
        <>
          <label className="field">
            <span>{words.state}</span>
            <select value={now.name} onChange={({ target }) => setState(target.value)}>
              {report.states.map((each) => (
                <option key={each.name}>{each.name}</option>
              ))}
            </select>
          </label>
          <LampRow
            lamps={lamps.map(({ id, colour }) => ({ id, colour: colour as LampColour }))}
            state={now}
          />
          <label className="field">
            <span>
              {words.cellAge}: <output>{words.charge(Math.round(charge * 100))}</output>
            </span>
            <input
              type="range"
              min={0.05}
              max={1}
              step={0.05}
              value={charge}
              aria-valuetext={words.charge(Math.round(charge * 100))}
              onChange={({ target }) => setCharge(Number(target.value))}
            />
            <span className="ends pencil" aria-hidden="true">
              <span>{words.spent}</span>
              <span>{words.fresh}</span>
            </span>
          </label>
          <PowerLines said={full} />
        </>
      )}
    </section>
  );
}
