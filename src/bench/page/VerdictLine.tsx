import { useBench } from '../state/store.ts';
import { benchWords as words } from '../../words/bench.ts';
import { countsOf } from '../verdict/counts.ts';
import { Strip } from './Strip.tsx';

/** The verdict in one line, told to screen readers when it changes; while work goes on, what is being done. */
export function VerdictLine() {
  const busy = useBench((state) => state.busy);
  const shown = useBench((state) => state.shown);
  const engine = useBench((state) => state.engine);
  return (
    <div className="verdict-line" role="status">
      {busy ? (
        <Strip share={shareOf[busy]} label={words.stages[busy]} />
      ) : shown ? (
        <span className={`verdict ${shown.verdict}`}>
          {words.verdict[shown.verdict](countsOf(shown.netlist.findings))}
        </span>
      ) : engine.ready ? (
        <span className="pencil">{words.noVerdict}</span>
      ) : (
        <Strip share={engine.share} label={words.engineLoading} />
      )}
    </div>
  );
}

/** How far along each stage lies, by the time it takes on a common photograph. */
const shareOf = { decode: 0.1, square: 0.3, copper: 0.55, trace: 0.8, net: 0.95, power: 0.98 };
