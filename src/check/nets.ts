import type { Card } from '../card/index.ts';
import { buildNetlist } from '../net/index.ts';
import type { Netlist } from '../net/index.ts';
import { comparePlan } from '../plan/index.ts';
import type { PlanComparison } from '../plan/index.ts';
import type { Traced } from '../trace/index.ts';
import { mergeFindings } from './mergeFindings.ts';

/** Nets, states and findings of a traced sheet, the card's plan compared where it has one. */
export function nets(traced: Traced, card: Card): { netlist: Netlist; compared?: PlanComparison } {
  const built = buildNetlist(traced, card);
  if (!card.plan || card.plan.strips.length === 0) return { netlist: built };
  const compared = comparePlan(traced, card);
  return { netlist: { ...built, findings: mergeFindings(built.findings, compared, card) }, compared };
}
