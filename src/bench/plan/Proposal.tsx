import type { Card } from '../../card/index.ts';
import type { Routed } from '../../plan/index.ts';
import { planFromTraced, suggestRoute } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import type { Shown } from '../state/types.ts';
import { setStrips } from './planEdits.ts';

const words = planWords.page;

interface Props {
  card: Card;
  shown?: Shown;
  proposed?: Routed;
  propose: (routed: Routed | undefined) => void;
}

/** A suggested route to take or to leave, and the plan out of the photograph. */
export function Proposal({ card, shown, proposed, propose }: Props) {
  const ready = card.cell !== undefined && card.lamps.length > 0;
  const take = () => {
    if (proposed) setStrips(proposed.strips);
    propose(undefined);
  };
  return (
    <>
      <div className="line-of-acts">
        <button type="button" disabled={!ready} onClick={() => propose(suggestRoute(card))}>
          {words.suggest}
        </button>
        <button
          type="button"
          disabled={!shown}
          onClick={() => shown && setStrips(planFromTraced(shown.traced))}
        >
          {words.fromPhoto}
        </button>
      </div>
      {!ready && <p className="pencil">{words.needsParts}</p>}
      {proposed && (
        <div role="status">
          <p>
            {words.suggestion(
              proposed.strips.length,
              proposed.tapeMm,
              proposed.folds,
              proposed.crossings.length,
            )}
          </p>
          <div className="line-of-acts">
            <button type="button" onClick={take}>
              {words.accept}
            </button>
            <button type="button" onClick={() => propose(undefined)}>
              {words.refuse}
            </button>
          </div>
        </div>
      )}
    </>
  );
}
