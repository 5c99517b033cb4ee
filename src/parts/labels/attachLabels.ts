import type { Card, CellKind } from '../../card/index.ts';
import type { Box, Point } from '../../geometry/index.ts';
import type { Label } from './types.ts';

/** A label belongs to a lamp whose body is within this distance, mm. */
const reachMm = 10;
/** Half a lamp's body, about, and the least distance that is told apart, mm. */
const bodyMm = 2;
const leastMm = 0.5;
/** The next lamp must be this many times farther, else we ask. */
const clearBy = 1.4;
/** A + stands by one end: the other end must be this many times farther. */
const endClearBy = 1.3;
/** Readings under this are only shown, never attached. */
const sure = 0.6;

/** What a label proposes; nothing of it counts until the maker takes it. */
export type LabelProposal =
  | { do: 'name-lamp'; lamp: string; as: string; label: Label }
  | { do: 'mark-plus'; lamp: string; side: 'plus' | 'minus'; agrees: boolean; label: Label }
  /** `onFace`: the cell lies there, its marked face, which is its +, up. */
  | { do: 'set-cell'; kind: CellKind; onFace: boolean; label: Label }
  | { do: 'set-title'; title: string; label: Label }
  | { do: 'use-plan'; code: string; label: Label }
  | { do: 'ask'; as: string; between: string[]; label: Label };

type Lamps = Card['lamps'];

/** Proposals from what was read: a label goes to one clearly nearest lamp only; where that is not clear it asks. */
export function attachLabels(labels: readonly Label[], { lamps }: Pick<Card, 'lamps'>): LabelProposal[] {
  const proposals = labels.flatMap((label) => propose(label, lamps));
  return proposals.map((proposal) => (contested(proposal, proposals, lamps) ? asked(proposal) : proposal));
}

function propose(label: Label, lamps: Lamps): LabelProposal[] {
  const { means } = label;
  if (means.kind === 'tag') return [{ do: 'use-plan', code: means.code, label }];
  if (label.certainty < sure) return [];
  if (means.kind === 'cell')
    return [{ do: 'set-cell', kind: means.cell, onFace: means.onFace === true, label }];
  if (means.kind === 'title') return [{ do: 'set-title', title: means.title, label }];
  if (means.kind === 'lamp') return nameProposals(label, means.id, lamps);
  return means.kind === 'polarity' ? plusProposals(label, means.sign, lamps) : [];
}

function nameProposals(label: Label, as: string, lamps: Lamps): LabelProposal[] {
  const [first, second] = nearest(label.box, lamps);
  if (!first) return [];
  if (second && second.mm < clearBy * first.mm)
    return [{ do: 'ask', as, between: [first.lamp.id, second.lamp.id], label }];
  return [{ do: 'name-lamp', lamp: first.lamp.id, as, label }];
}

function plusProposals(label: Label, sign: '+' | '-', lamps: Lamps): LabelProposal[] {
  const [first, second] = nearest(label.box, lamps);
  if (!first || (second && second.mm < clearBy * first.mm)) return [];
  const { lamp } = first;
  const [plus, minus] = [distance(label.at, lamp.plus), distance(label.at, lamp.minus)];
  if (Math.max(plus, minus) < endClearBy * Math.min(plus, minus)) return [];
  const side = plus < minus ? 'plus' : 'minus';
  return [{ do: 'mark-plus', lamp: lamp.id, side, agrees: (side === 'plus') === (sign === '+'), label }];
}

/** Lamps by the paper between a label's box and their bodies. */
function nearest(box: Box, lamps: Lamps): { lamp: Lamps[number]; mm: number }[] {
  return lamps
    .map((lamp) => ({ lamp, mm: Math.max(leastMm, boxToAxis(box, lamp.plus, lamp.minus) - bodyMm) }))
    .filter(({ mm }) => mm <= reachMm)
    .sort((a, b) => a.mm - b.mm);
}

/** Two names for one lamp, one name for two, or a name that another lamp has and no label takes from it. */
function contested(proposal: LabelProposal, all: readonly LabelProposal[], lamps: Lamps): boolean {
  if (proposal.do !== 'name-lamp') return false;
  const names = all.filter((each) => each.do === 'name-lamp');
  const rival = names.some(
    (each) => each !== proposal && (each.lamp === proposal.lamp) !== (each.as === proposal.as),
  );
  const holder = lamps.find(({ id }) => id === proposal.as && id !== proposal.lamp);
  return rival || (holder !== undefined && !names.some(({ lamp }) => lamp === holder.id));
}

function asked(proposal: LabelProposal): LabelProposal {
  if (proposal.do !== 'name-lamp') return proposal;
  return { do: 'ask', as: proposal.as, between: [proposal.lamp], label: proposal.label };
}

/** Distance between a box and the line from a lamp's one end to the other, mm; places a tenth of the line apart are tried. */
function boxToAxis({ x0, y0, x1, y1 }: Box, a: Point, b: Point): number {
  const gaps = Array.from({ length: 11 }, (_, k) => {
    const [x, y] = [a[0] + (k / 10) * (b[0] - a[0]), a[1] + (k / 10) * (b[1] - a[1])];
    return Math.hypot(Math.max(x0 - x, 0, x - x1), Math.max(y0 - y, 0, y - y1));
  });
  return Math.min(...gaps);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
