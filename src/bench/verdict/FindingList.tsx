import { benchWords as words } from '../../words/bench.ts';
import { change } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { FindingLine } from './FindingLine.tsx';

/** Every finding as a line; one of them is open. */
export function FindingList({ shown, mark }: { shown: Shown; mark: number | undefined }) {
  const { findings } = shown.netlist;
  if (findings.length === 0) return <p>{words.findings.none}</p>;
  return (
    <ol className="findings">
      {findings.map((finding, i) => (
        <FindingLine
          key={`${finding.kind} ${finding.at.join(' ')}`}
          number={i + 1}
          finding={finding}
          shown={shown}
          open={mark === i + 1}
          onToggle={() => change({ mark: mark === i + 1 ? undefined : i + 1 })}
        />
      ))}
    </ol>
  );
}
