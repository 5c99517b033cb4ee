import { goTo } from '../state/goTo.ts';
import { useBench } from '../state/store.ts';
import { neighbour } from '../steps.ts';
import { benchWords as words } from '../../words/bench.ts';
import { VerdictLine } from './VerdictLine.tsx';

/** The foot: the verdict as it stands now, and the way on. */
export function Foot() {
  const step = useBench((state) => state.step);
  const hasPhoto = useBench(({ shot }) => shot !== undefined);
  const back = neighbour(step, -1);
  const next = neighbour(step, 1);
  return (
    <footer className="foot">
      <VerdictLine />
      <div className="ways">
        {back && (
          <button type="button" className="quiet" onClick={() => goTo(back)}>
            {words.back}
            <span className="on-broad">{words.backTo(words.steps[back])}</span>
          </button>
        )}
        {next && hasPhoto && (
          <button type="button" className="main" onClick={() => goTo(next)}>
            {words.next}
            <span className="on-broad">{words.nextTo(words.steps[next])}</span>
          </button>
        )}
      </div>
    </footer>
  );
}
