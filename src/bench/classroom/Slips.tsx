import type { Card } from '../../card/index.ts';
import type { Finding } from '../../net/index.ts';
import { sayFinding } from '../../record/sayFinding.ts';
import { sayPlace } from '../../record/sayPlace.ts';
import { classroomWords as words } from '../../words/classroom.ts';
import { findingWords } from '../../words/findings.ts';
import { useBench } from '../state/store.ts';
import type { ClassCard } from './classroom.ts';

/** A slip a card, seen on paper only: verdict, what to mend and what to check, with places in words. */
export function Slips({ cards }: { cards: ClassCard[] }) {
  const plan = useBench(({ card }) => card);
  return (
    <div className="slips">
      {cards.map((card) => (
        <article key={card.id} className="slip" aria-label={words.slip(card.name)}>
          <h2>{card.name}</h2>
          <p className="slip-verdict">{words.verdicts[card.verdict ?? 'none']}</p>
          {card.why && <p>{card.why}</p>}
          {card.verdict && card.findings.length === 0 && <p>{words.nothing}</p>}
          <ol>
            {card.findings.map((finding, i) => (
              <SlipLine key={i} finding={finding} plan={plan} />
            ))}
          </ol>
        </article>
      ))}
    </div>
  );
}

function SlipLine({ finding, plan }: { finding: Finding; plan: Card }) {
  const said = sayFinding(finding);
  return (
    <li>
      <b>{findingWords.names[finding.kind]}</b>, {sayPlace(finding, plan)}. {said.say} {said.do}
    </li>
  );
}
