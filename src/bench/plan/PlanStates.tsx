import type { PlanChecks } from '../../plan/index.ts';
import { benchWords } from '../../words/bench.ts';
import { sayState } from '../../words/states.ts';
import { useBench } from '../state/store.ts';
import { StateGrid } from '../verdict/StateGrid.tsx';

/** Which lamp would light when, were the plan laid as drawn. */
export function PlanStates({ checks }: { checks: PlanChecks | undefined }) {
  const lamps = useBench(({ card }) => card.lamps);
  const { states: text } = benchWords;
  if (!checks || lamps.length === 0 || checks.power.states.length === 0) return null;
  const shorted = new Set(checks.states.filter((each) => each.shorted).map(({ name }) => name));
  return (
    <section aria-labelledby="plan-states">
      <h2 id="plan-states">{text.heading}</h2>
      <StateGrid
        labelledBy="plan-states"
        lamps={lamps}
        states={checks.power.states}
        shorted={shorted}
        name={sayState}
      />
    </section>
  );
}
