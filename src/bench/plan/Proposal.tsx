import { useState } from 'react';
import type { Card, PlanStrip } from '../../card/index.ts';
import { planFromTraced } from '../../plan/index.ts';
import { length } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { FileButton } from '../shoot/FileButton.tsx';
import { editCard } from '../state/editCard.ts';
import { bench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import type { Shown } from '../state/types.ts';
import { call } from '../worker/client.ts';
import { setStrips } from './planEdits.ts';
import { withoutPictures } from './usePlanChecks.ts';

/** Strips to take or to leave, and what is said of them. */
export interface Proposed {
  strips: PlanStrip[];
  said: string;
}

interface Props {
  card: Card;
  shown?: Shown;
  widthMm: number;
  proposed?: Proposed;
  propose: (proposed: Proposed | undefined) => void;
}

const pictures = 'image/*,.heic';

/** A route without crossings, or a plan traced from a photograph: shown first, then taken or left. */
export function Proposal({ card, shown, widthMm, proposed, propose }: Props) {
  const { page: text } = planWords;
  const [said, setSaid] = useState('');
  const ready = card.cell !== undefined && card.lamps.length > 0;
  const run = (working: string, work: () => Promise<Proposed | string>) => {
    setSaid(working);
    propose(undefined);
    work()
      .then((made) => {
        setSaid(typeof made === 'string' ? made : '');
        if (typeof made !== 'string') propose(made);
      })
      .catch((error) => {
        setSaid('');
        tellTrouble(error);
      });
  };
  const suggest = async () => {
    const { strips, tapeMm, folds, crossings } = await call('suggestRoute', { card: withoutPictures(card) });
    if (!strips.length) return text.noRoute;
    return { strips, said: text.suggestion(strips.length, length(tapeMm, 0), folds, crossings.length) };
  };
  const traced = (strips: PlanStrip[]) =>
    strips.length ? { strips, said: text.tracedProposal(strips.length) } : text.nothingTraced;
  const sketch = (file: File) => async () =>
    traced(
      await call('planFromSketch', { card: withoutPictures(bench().card), name: file.name, file, widthMm }),
    );
  const take = () => {
    if (proposed) editCard((now) => setStrips(now, proposed.strips));
    propose(undefined);
  };
  return (
    <section aria-labelledby="plan-start">
      <h2 id="plan-start">{text.startHeading}</h2>
      <div className="line-of-acts">
        <button type="button" disabled={!ready} onClick={() => run(text.suggesting, suggest)}>
          {text.suggest}
        </button>
        {shown && (
          <button type="button" onClick={() => run('', async () => traced(planFromTraced(shown.traced)))}>
            {text.fromPhoto}
          </button>
        )}
        <FileButton
          label={text.fromSketch}
          accept={pictures}
          take={(file) => run(text.tracing, sketch(file))}
        />
      </div>
      {!ready && <p className="pencil">{text.needsParts}</p>}
      <div role="status">
        {said && <p>{said}</p>}
        {proposed && (
          <div className="plan-proposal">
            <p>{proposed.said}</p>
            <div className="line-of-acts">
              <button type="button" className="main" onClick={take}>
                {text.accept}
              </button>
              <button type="button" onClick={() => propose(undefined)}>
                {text.refuse}
              </button>
            </div>
          </div>
        )}
      </div>
    </section>
  );
}
