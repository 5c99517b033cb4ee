import type { FindingKind } from '../../card/index.ts';
import { holds, type Finding, type Verdict } from '../../net/index.ts';

/** One card's outcome, as far as the tally needs it; without a verdict it could not be checked. */
export interface Outcome {
  verdict?: Verdict;
  findings: (Pick<Finding, 'kind' | 'weight' | 'certainty'> & { checked?: unknown })[];
}

export interface Tally {
  total: number;
  verdicts: Record<Verdict | 'none', number>;
  /** Faults that hold cards, the commonest first, each with the number of cards it is on. */
  faults: { kind: FindingKind; cards: number }[];
}

/** Sums up many cards of one plan. A fault counts once a card, however often it is on it. */
export function tally(outcomes: Outcome[]): Tally {
  const verdicts = { clear: 0, 'clear-once-checked': 0, hold: 0, none: 0 };
  const cards = new Map<FindingKind, number>();
  for (const { verdict, findings } of outcomes) {
    verdicts[verdict ?? 'none']++;
    if (verdict === undefined) continue;
    for (const kind of new Set(findings.filter(holds).map((each) => each.kind)))
      cards.set(kind, (cards.get(kind) ?? 0) + 1);
  }
  const faults = [...cards].map(([kind, on]) => ({ kind, cards: on })).sort((a, b) => b.cards - a.cards);
  return { total: outcomes.length, verdicts, faults };
}
