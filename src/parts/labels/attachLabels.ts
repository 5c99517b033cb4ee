import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Label } from './types.ts';

/** A label belongs to a lamp within this distance, mm. */
const reachMm = 14;
/** The next lamp must be this many times farther, else we ask. */
const clearBy = 1.4;
/** Readings under this are only shown, never attached by themselves. */
const sure = 0.6;

/** What a label proposes; the maker confirms it. */
export type LabelProposal =
  | { do: 'name-lamp'; lamp: string; as: string; label: Label }
  | { do: 'mark-plus'; lamp: string; side: 'plus' | 'minus'; agrees: boolean; label: Label }
  | { do: 'set-cell'; kind: string; label: Label }
  | { do: 'set-title'; title: string; label: Label }
  | { do: 'use-plan'; code: string; label: Label }
  | { do: 'ask'; between: string[]; label: Label };

/** Proposals from what was read: a label attaches by itself only to one clearly nearest lamp. */
export function attachLabels(labels: Label[], card: Pick<Card, 'lamps'>): LabelProposal[] {
  return labels.flatMap((label) => propose(label, card.lamps));
}

function propose(label: Label, lamps: Card['lamps']): LabelProposal[] {
  const { means } = label;
  if (means.kind === 'tag') return [{ do: 'use-plan', code: means.code, label }];
  if (label.certainty < sure) return [];
  if (means.kind === 'cell') return [{ do: 'set-cell', kind: means.cell, label }];
  if (means.kind === 'title') return [{ do: 'set-title', title: means.title, label }];
  if (means.kind === 'nothing') return [];
  const near = lamps
    .map((lamp) => ({ lamp, mm: distance(label.at, middle(lamp.plus, lamp.minus)) }))
    .filter(({ mm }) => mm <= reachMm)
    .sort((a, b) => a.mm - b.mm);
  if (near.length === 0) return [];
  if (near.length > 1 && near[1].mm < clearBy * near[0].mm) {
    return [{ do: 'ask', between: [near[0].lamp.id, near[1].lamp.id], label }];
  }
  const { lamp } = near[0];
  if (means.kind === 'lamp') {
    return lamp.id === means.id ? [] : [{ do: 'name-lamp', lamp: lamp.id, as: means.id, label }];
  }
  const nearerPlus = distance(label.at, lamp.plus) < distance(label.at, lamp.minus);
  const side = nearerPlus ? 'plus' : 'minus';
  return [
    { do: 'mark-plus', lamp: lamp.id, side, agrees: (side === 'plus') === (means.sign === '+'), label },
  ];
}

function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
