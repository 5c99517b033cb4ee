import { findingKinds } from '../card/index.ts';
import type { Finding } from './types.ts';

const weights = { holds: 0, check: 1, note: 2 };

/** What holds first, then by severity of kind (the order of `findingKinds`), then down the page. */
export function ranked(findings: Finding[]): Finding[] {
  const rank = ({ weight, certainty }: Finding) => weights[weight] + (certainty < 0.5 ? 0.5 : 0);
  return [...findings].sort(
    (a, b) =>
      rank(a) - rank(b) ||
      findingKinds.indexOf(a.kind) - findingKinds.indexOf(b.kind) ||
      a.at[1] - b.at[1] ||
      a.at[0] - b.at[0],
  );
}
