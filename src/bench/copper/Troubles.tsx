import { benchWords as words } from '../../words/bench.ts';
import { copperWords } from '../../words/copper.ts';
import type { Shown } from '../state/types.ts';

/** Under this the verdict cannot be trusted. */
const readableFrom = 0.5;

/** Why the photograph reads badly, where it does. */
export function Troubles({ shown: { readable, troubles } }: { shown: Shown }) {
  if (troubles.length === 0) return null;
  return (
    <div className="warn" role="status">
      {readable < readableFrom && (
        <p>
          <b>{words.unreadable}</b>
        </p>
      )}
      {troubles.map((trouble) => (
        <p key={trouble}>{copperWords.troubles[trouble]}</p>
      ))}
    </div>
  );
}
