import type { PlanStrip } from '../../card/index.ts';
import type { PlanComparison } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import { removeStrip } from './planEdits.ts';

const words = planWords.page;

/** Planned strips in the order of laying, and how each stands in the build. */
export function StripList({ strips, compared }: { strips: PlanStrip[]; compared?: PlanComparison }) {
  if (!strips.length) return null;
  const standing = new Map(compared?.strips.map((s) => [s.id, s.standing]));
  return (
    <section>
      <h2>{words.strips}</h2>
      {compared && <p>{planWords.progress(compared.progress.laid, compared.progress.of)}</p>}
      <ol className="plan-strips">
        {strips.map(({ id, width_mm }) => {
          const stands = standing.get(id);
          return (
            <li key={id}>
              <span>
                {id}, {planWords.mm(width_mm)}
                {stands && `: ${words.standing[stands]}`}
              </span>
              <button type="button" aria-label={words.remove(id)} onClick={() => removeStrip(id)}>
                ×
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
