import type { Card, PlanStrip } from '../../card/index.ts';
import { lengthOf, type PlanComparison } from '../../plan/index.ts';
import { length } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import type { Picked } from './picked.ts';
import { stripsOf } from './planEdits.ts';
import { StripEditor } from './StripEditor.tsx';

interface Props {
  card: Card;
  compared: PlanComparison | undefined;
  picked: Picked | undefined;
  pick(picked: Picked | undefined): void;
}

/** Planned strips in the order of laying, and how each stands in the build; the picked one opens to be changed. */
export function StripList({ card, compared, picked, pick }: Props) {
  const { page: text } = planWords;
  const strips = stripsOf(card);
  const standing = new Map(compared?.strips.map((s) => [s.id, s.standing]));
  return (
    <section aria-labelledby="plan-strips">
      <h2 id="plan-strips">{text.strips}</h2>
      {!strips.length && <p className="pencil">{text.noStrips}</p>}
      <ol className="part-list">
        {strips.map((strip, k) => {
          const open = picked?.kind === 'strip' && picked.id === strip.id;
          const stands = standing.get(strip.id);
          return (
            <li key={strip.id} className={open ? 'open' : undefined}>
              <button
                type="button"
                className="part-head"
                aria-expanded={open}
                onClick={() => pick(open ? undefined : { kind: 'strip', id: strip.id })}
              >
                <b>
                  {k + 1}. {strip.id}
                </b>
                <small>{stands ? text.standing[stands] : lineOf(strip)}</small>
              </button>
              {open && (
                <div className="part-body">
                  <StripEditor strip={strip} corner={picked.corner} pick={pick} />
                </div>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function lineOf({ net, width_mm, path }: PlanStrip): string {
  return planWords.page.stripLine(net, length(width_mm), length(lengthOf(path), 0));
}
