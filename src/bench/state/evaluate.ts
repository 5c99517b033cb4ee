import type { Card } from '../../card/index.ts';
import type { JoinedSheets } from '../../check/index.ts';
import type { Netlist, Verdict } from '../../net/index.ts';
import type { PlanComparison } from '../../plan/index.ts';
import type { Traced } from '../../trace/index.ts';
import { bench, change } from './store.ts';

type Evaluate = (
  traced: Traced,
  card: Card,
  compared?: PlanComparison,
  joined?: JoinedSheets,
) => { netlist: Netlist; verdict: Verdict };

let evaluate: Evaluate | undefined;

/** Fetches the net's code, so that later taps are answered at once. */
export async function fetchEvaluation(): Promise<void> {
  const [{ mergeFindings }, { netsOfSheets }, { verdictOf }] = await Promise.all([
    import('../../check/mergeFindings.ts'),
    import('../../check/sheets/netsOfSheets.ts'),
    import('../../net/index.ts'),
  ]);
  evaluate = (traced, card, compared, joined) => {
    const built = netsOfSheets(traced, card, joined);
    const findings = mergeFindings(built.findings, compared, card);
    return { netlist: { ...built, findings }, verdict: verdictOf(findings) };
  };
}

/** Renews nets and findings in this very frame, the build against the plan being taken as it was last compared. @returns false where the copper is not traced yet */
export function evaluateHere(): boolean {
  const { shown, card } = bench();
  if (!evaluate || !shown) return false;
  const started = performance.now();
  const renewed = evaluate(shown.traced, card, shown.compared, shown.joined);
  const net = performance.now() - started;
  change({ shown: { ...shown, ...renewed, timingsMs: { ...shown.timingsMs, net } } });
  return true;
}
