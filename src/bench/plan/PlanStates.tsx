import type { PlanChecks } from '../../plan/index.ts';
import { benchWords } from '../../words/bench.ts';
import { sayState } from '../../words/states.ts';
import { useBench } from '../state/store.ts';

/** Which lamp would light when, were the plan laid as drawn. */
export function PlanStates({ checks }: { checks: PlanChecks | undefined }) {
  const lamps = useBench(({ card }) => card.lamps);
  const { states: text } = benchWords;
  if (!checks || lamps.length === 0 || checks.power.states.length === 0) return null;
  const shorted = new Set(checks.states.filter((each) => each.shorted).map(({ name }) => name));
  return (
    <section aria-labelledby="plan-states">
      <h2 id="plan-states">{text.heading}</h2>
      <div className="table-scroll" tabIndex={0} role="group" aria-labelledby="plan-states">
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
            {checks.power.states.map(({ name, lamps: figures }) => (
              <tr key={name}>
                <th scope="row">
                  {sayState(name)}
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
    </section>
  );
}
