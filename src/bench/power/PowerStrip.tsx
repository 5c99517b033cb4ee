import type { LampColour } from '../../card/index.ts';
import type { PowerReport, PowerWords } from '../../power/index.ts';
import { powerStripWords as words } from '../../words/powerStrip.ts';
import { sayState } from '../../words/states.ts';
import { Slider } from '../page/Slider.tsx';
import { useBench } from '../state/store.ts';
import { LampRow } from './LampRow.tsx';
import { busiest } from './busiest.ts';
import { PowerLines } from './PowerLines.tsx';
import './power.css';

interface Props {
  report: PowerReport | undefined;
  said: PowerWords | undefined;
  state: string | undefined;
  setState(name: string): void;
  charge: number;
  setCharge(share: number): void;
}

/** The lamps as bright as they would look in a state, at a charge of the cell that the maker slides. */
export function PowerStrip({ report, said, state, setState, charge, setCharge }: Props) {
  const lamps = useBench(({ card }) => card.lamps);
  const cell = useBench(({ card }) => card.cell);
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
                <option key={each.name} value={each.name}>
                  {sayState(each.name)}
                </option>
              ))}
            </select>
          </label>
          <LampRow
            lamps={lamps.map(({ id, colour }) => ({ id, colour: colour as LampColour }))}
            state={now}
          />
          <Slider
            label={
              <>
                {words.cellAge}: <output>{words.charge(Math.round(charge * 100))}</output>
              </>
            }
            value={charge}
            least={0.05}
            step={0.05}
            said={words.charge(Math.round(charge * 100))}
            ends={[words.spent, words.fresh]}
            set={setCharge}
          />
          <PowerLines said={said} />
        </>
      )}
    </section>
  );
}
