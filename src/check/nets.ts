import type { Card } from '../card/index.ts';
import type { Netlist } from '../net/index.ts';
import { comparePlan } from '../plan/index.ts';
import type { PlanComparison } from '../plan/index.ts';
import type { Traced } from '../trace/index.ts';
import { cardWithSheets, netsOfSheets } from './sheets/index.ts';
import type { JoinedSheets } from './sheets/index.ts';
import { mergeFindings } from './mergeFindings.ts';

/**
 * Nets, states and findings of a traced sheet, the card's plan compared where it has one.
 * @param joined what laying several sheets together gave
 */
export function nets(
  traced: Traced,
  given: Card,
  joined?: JoinedSheets,
): { netlist: Netlist; compared?: PlanComparison } {
  const card = cardWithSheets(given, joined?.beneath);
  const built = netsOfSheets(traced, given, joined);
  if (!card.plan || card.plan.strips.length === 0) return { netlist: built };
  const compared = comparePlan(traced, card);
  return { netlist: { ...built, findings: mergeFindings(built.findings, compared, card) }, compared };
}
