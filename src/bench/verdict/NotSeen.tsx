import { benchWords as words } from '../../words/bench.ts';
import type { Shown } from '../state/types.ts';

/** What the photograph cannot settle. */
export function NotSeen({ shown }: { shown: Shown }) {
  const scale = shown.scale?.say;
  const notSeen = scale ? [scale, ...shown.netlist.notSeen] : shown.netlist.notSeen;
  return (
    <section aria-labelledby="not-seen">
      <h2 id="not-seen">{words.findings.notSeen}</h2>
      <p className="pencil">{words.findings.notSeenLead}</p>
      <ul className="not-seen">
        {notSeen.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </section>
  );
}
