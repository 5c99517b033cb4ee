import { sayFinding } from '../../record/sayFinding.ts';
import type { PlanChecks } from '../../plan/index.ts';
import { findingWords } from '../../words/findings.ts';
import { length } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { editCard } from '../state/editCard.ts';
import { Disc } from '../verdict/ProofMark.tsx';
import { layPatch } from './planEdits.ts';
import '../verdict/verdict.css';

interface Props {
  checks: PlanChecks | undefined;
  checking: boolean;
}

/** Crossings with the patch that would part them, and the checker's findings of the plan, numbered as on the sheet. */
export function PlanChecksList({ checks, checking }: Props) {
  const { page: text } = planWords;
  const clear = checks && checks.crossings.length + checks.findings.length === 0;
  return (
    <section aria-labelledby="plan-checks">
      <h2 id="plan-checks">{text.checksHeading}</h2>
      <p className="pencil" role="status">
        {checking ? text.checking : !checks ? text.checksNothing : clear ? text.checksClear : ''}
      </p>
      {checks?.crossings.map((crossing) => (
        <div key={crossing.at.join()} className="plan-crossing warn">
          <p>
            {text.crossing(crossing.nets)}{' '}
            <small>{text.at(length(crossing.at[0]), length(crossing.at[1]))}</small>
          </p>
          <button type="button" onClick={() => editCard((card) => layPatch(card, crossing))}>
            {text.layPatch}
          </button>
        </div>
      ))}
      {checks && checks.findings.length > 0 && (
        <ol className="findings">
          {checks.findings.map((finding, k) => {
            const said = sayFinding(finding);
            return (
              <li key={k} className="finding plan-finding">
                <svg viewBox="-14 -14 28 28" aria-hidden="true">
                  <Disc number={k + 1} weight={finding.weight} settled={false} />
                </svg>
                <details>
                  <summary>{findingWords.names[finding.kind]}</summary>
                  <p>{said.say}</p>
                  <p>{said.do}</p>
                </details>
              </li>
            );
          })}
        </ol>
      )}
    </section>
  );
}
