import type { Card } from '../../card/schema.ts';
import type { LabelProposal } from '../../parts/labels/attachLabels.ts';
import { layCell, renamePart } from '../parts/partEdits.ts';

type CellProposal = Extract<LabelProposal, { do: 'set-cell' }>;

/** A label that says what the card says already asks for nothing. */
export function sortProposals(proposals: readonly LabelProposal[], card: Card) {
  const open = proposals.filter((each) => !agrees(each, card));
  return { open, agreeing: proposals.length - open.length };
}

function agrees(proposal: LabelProposal, card: Card): boolean {
  if (proposal.do === 'name-lamp') return proposal.lamp === proposal.as;
  if (proposal.do === 'mark-plus') return proposal.agrees;
  if (proposal.do === 'set-cell') return takeCell(card, proposal) === card || isCell(card, proposal);
  return proposal.do === 'set-title' && Boolean(card.title);
}

/** Whether the card's cell is as its marking says. */
function isCell({ cell }: Card, { kind, onFace }: CellProposal): boolean {
  return cell !== undefined && cell.kind === kind && (!onFace || cell.up === '+');
}

/** Gives lamps new names all at once, so that two may change theirs; a lamp left with a taken name gets a fresh one. */
export function nameLamps(card: Card, names: readonly { lamp: string; as: string }[]): Card {
  const taken = new Set(names.map(({ as }) => as));
  const moved = new Set(names.map(({ lamp }) => lamp));
  const displaced = card.lamps.filter(({ id }) => taken.has(id) && !moved.has(id)).map(({ id }) => id);
  const all = [...names, ...displaced.map((id) => ({ lamp: id, as: freeName(card, id, taken) }))];
  const waiting = all.reduce((so, { lamp }, n) => renamePart(so, lamp, aside(n)), card);
  return all.reduce((so, { as }, n) => renamePart(so, aside(n), as), waiting);
}

const aside = (n: number) => `\u0000${n}`;

function freeName({ lamps, contacts }: Card, id: string, taken: ReadonlySet<string>): string {
  const used = new Set([...taken, ...[...lamps, ...contacts].map((part) => part.id)]);
  let n = 2;
  while (used.has(`${id}-${n}`)) n++;
  return `${id}-${n}`;
}

/** Makes the cell of the kind read; read off its own face it lies there with its + up, whether the card had one or not. */
export function takeCell(card: Card, { kind, onFace, label }: CellProposal): Card {
  const laid = card.cell || !onFace ? card : layCell(card, label.at);
  return laid.cell
    ? { ...laid, cell: { ...laid.cell, kind, ...(onFace ? { up: '+' as const } : {}) } }
    : laid;
}
