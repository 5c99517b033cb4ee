import type { Card } from '../../card/index.ts';
import type { LabelProposal } from '../../parts/labels/attachLabels.ts';
import { labelWords as words } from '../../words/labels.ts';
import { flipLamp } from '../parts/partEdits.ts';
import { editCard } from '../state/editCard.ts';
import { nameLamps, takeCell } from './labelEdits.ts';
import { TagLines } from './TagLines.tsx';

/** One thing that a label proposes, with what takes it. */
export function ProposalLine({ proposal, card }: { proposal: LabelProposal; card: Card }) {
  const sure = words.sure(Math.round(100 * proposal.label.certainty));
  if (proposal.do === 'use-plan') return <TagLines tag={proposal.code} card={card} sure={sure} />;
  if (proposal.do === 'ask')
    return (
      <>
        <span>{words.ask(proposal.as)}</span>
        {proposal.between.map((lamp) => (
          <Act
            key={lamp}
            text={words.askLamp(lamp)}
            edit={(now) => nameLamps(now, [{ lamp, as: proposal.as }])}
          />
        ))}
        <small>{sure}</small>
      </>
    );
  const { text, edit } = taking(proposal);
  return (
    <>
      <Act text={text} edit={edit} />
      <small>{sure}</small>
    </>
  );
}

function Act({ text, edit }: { text: string; edit: (card: Card) => Card }) {
  return (
    <button type="button" onClick={() => editCard(edit)}>
      {text}
    </button>
  );
}

type Taken = Exclude<LabelProposal, { do: 'ask' | 'use-plan' }>;

function taking(proposal: Taken): { text: string; edit: (card: Card) => Card } {
  switch (proposal.do) {
    case 'name-lamp':
      return {
        text: words.nameLamp(proposal.lamp, proposal.as),
        edit: (card) => nameLamps(card, [proposal]),
      };
    case 'mark-plus':
      return { text: words.flip(proposal.lamp), edit: (card) => flipLamp(card, proposal.lamp) };
    case 'set-cell':
      return {
        text: proposal.onFace ? words.marked(proposal.kind) : words.cell(proposal.kind),
        edit: (card) => takeCell(card, proposal),
      };
    case 'set-title':
      return { text: words.title(proposal.title), edit: (card) => ({ ...card, title: proposal.title }) };
  }
}
