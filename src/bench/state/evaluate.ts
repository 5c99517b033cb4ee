import type { Card } from '../../card/index.ts';
import type { Netlist, Verdict } from '../../net/index.ts';
import type { Traced } from '../../trace/index.ts';
import { bench, change } from './store.ts';

type Evaluate = (traced: Traced, card: Card) => { netlist: Netlist; verdict: Verdict };

let evaluate: Evaluate | undefined;

/** Fetches the net's code, so that later taps are answered at once. */
export async function fetchEvaluation(): Promise<void> {
  const [{ nets }, { verdictOf }] = await Promise.all([
    import('../../check/nets.ts'),
    import('../../net/index.ts'),
  ]);
  evaluate = (traced, card) => {
    const { netlist } = nets(traced, card);
    return { netlist, verdict: verdictOf(netlist.findings) };
  };
}

/** Renews nets and findings in this very frame. @returns false where the copper is not traced yet */
export function evaluateHere(): boolean {
  const { shown, card } = bench();
  if (!evaluate || !shown) return false;
  const started = performance.now();
  const renewed = evaluate(shown.traced, card);
  const net = performance.now() - started;
  change({ shown: { ...shown, ...renewed, timingsMs: { ...shown.timingsMs, net } } });
  return true;
}
