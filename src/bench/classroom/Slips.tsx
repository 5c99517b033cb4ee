import type { Finding } from '../../net/index.ts';
import { sayFinding } from '../../record/sayFinding.ts';
import { benchWords } from '../../words/bench.ts';
import { classroomWords as words } from '../../words/classroom.ts';
import { recordWords } from '../../words/record.ts';
import type { ClassCard } from './classroom.ts';

/** A slip a card, seen on paper only: verdict, what to mend and what to check, with places in words. */
export function Slips({ cards }: { cards: ClassCard[] }) {
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
              <SlipLine key={i} finding={finding} />
            ))}
          </ol>
        </article>
      ))}
    </div>
  );
}

function SlipLine({ finding }: { finding: Finding }) {
  const said = sayFinding(finding);
  const [x, y] = finding.at;
  return (
    <li>
      <b>{recordWords.kinds[finding.kind]}</b>, {benchWords.findings.place(x, y)}. {said.say} {said.do}
    </li>
  );
}
