import type { Card } from '../card/index.ts';
import { attach, type Attached } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import { distance, type Case } from './case.ts';
import { bridges } from './findings/bridges.ts';
import { missedContacts, rimShorts } from './findings/contacts.ts';
import { gaps } from './findings/gaps.ts';
import { lampsOffStrip, litTooSoon, reversedLamps, unfedLamps } from './findings/lamps.ts';
import { looseEnds, narrowNecks, nearEdges, seams, tightPlaces } from './findings/layout.ts';
import { notSeen } from './notSeen.ts';
import { ranked } from './ranked.ts';
import { statesOf } from './states.ts';
import type { Finding, Netlist } from './types.ts';
import { wire } from './wiring.ts';

/**
 * Nets, states and findings of a traced sheet with the parts that its card declares. Root causes are told, their
 * consequences are not: a lamp that a gap starves is named by the gap.
 */
export function buildNetlist(traced: Traced, card: Card, attached: Attached = attach(traced, card)): Netlist {
  const wiring = wire(traced, attached, card);
  const states = statesOf(card, wiring.nets, wiring.netOf);
  const found: Case = { traced, card, attached, wiring, states };
  const joined = [...bridges(found), ...rimShorts(found)];
  const broken = gaps(found);
  const off = lampsOffStrip(found);
  const reversed = joined.some(({ kind }) => kind === 'shorted-cell' || kind === 'bridge')
    ? []
    : reversedLamps(found);
  const missed = missedContacts(found);
  const early = joined.length > 0 ? [] : litTooSoon(found);
  const roots = [...joined, ...broken, ...off, ...reversed, ...missed, ...early];
  const explained = new Set(roots.flatMap(({ lamps }) => lamps));
  for (const id of behindMissed(card, missed)) explained.add(id);
  const unfed = broken.length + missed.length > 0 && card.plan ? [] : unfedLamps(found, explained);
  const layout = [
    ...tightPlaces(found),
    ...narrowNecks(found),
    ...seams(found),
    ...looseEnds(found),
    ...nearEdges(found),
  ];
  const findings = [...roots, ...unfed, ...layout.filter((each) => !told(each, roots))];
  return {
    nets: wiring.nets,
    netOf: wiring.netOf,
    states,
    findings: ranked(findings.map((each) => settled(each, card))),
    notSeen: notSeen(traced, card),
  };
}

/** Lamps whose own contact is missed: the contact says it. */
function behindMissed(card: Card, missed: Finding[]): string[] {
  const of = new Set(missed.map(({ facts }) => facts.of));
  const all = of.has('cell+') || of.has('cell-');
  return card.lamps
    .filter(({ intent }) => all || (typeof intent === 'object' && of.has(intent.contact)))
    .map(({ id }) => id);
}

/** A remark on the layout at the place of a fault says nothing new. */
function told(remark: Finding, roots: Finding[]): boolean {
  return roots.some(({ at, certainty }) => certainty >= 0.5 && distance(at, remark.at) < 3);
}

/** Marks what the maker has checked by hand. */
function settled(finding: Finding, card: Card): Finding {
  const by = card.checked.find(({ kind, at }) => kind === finding.kind && distance(at, finding.at) < 3);
  return by ? { ...finding, checked: { note: by.note } } : finding;
}
