import type { Card } from '../card/index.ts';
import { attach, type Attached } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import type { Case } from './case.ts';
import { distance } from './distance.ts';
import { certain } from './certainty/index.ts';
import { bridges } from './findings/bridges.ts';
import { missedContacts, rimShorts } from './findings/contacts.ts';
import { faintBridges } from './findings/faintBridges.ts';
import { closedFlapBridges } from './findings/flaps.ts';
import { gaps } from './findings/gaps.ts';
import { lampsOffStrip, litTooSoon, reversedLamps, unfedLamps } from './findings/lamps.ts';
import { looseEnds, narrowNecks, nearEdges, seams, tightPlaces } from './findings/layout.ts';
import { nestFindings } from './findings/nest.ts';
import { scantPatches } from './findings/patches.ts';
import { litByAnother, strokesOutOfOrder } from './findings/strokes.ts';
import { laidStrips } from './laidStrips.ts';
import { notSeen } from './notSeen.ts';
import { openCrossings } from './openings.ts';
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
  const found: Case = { traced, card, attached, wiring, states, laid: laidStrips(traced, card) };
  const roots = rootCauses(found).map(certain);
  const layout = [
    ...tightPlaces(found),
    ...narrowNecks(found),
    ...seams(found),
    ...looseEnds(found),
    ...nearEdges(found),
  ];
  const findings = layout.map(certain).reduce((all, each) => (told(each, all) ? all : [...all, each]), roots);
  return {
    nets: wiring.nets,
    netOf: wiring.netOf,
    states,
    cuts: openCrossings(traced, card).map(({ piece, at, widthMm }) => ({ piece, at, widthMm })),
    findings: ranked(findings.map((each) => settled(each, card))),
    notSeen: notSeen(traced, card),
  };
}

/** Faults, each told once by what caused it. */
function rootCauses(found: Case): Finding[] {
  const joined = [...bridges(found), ...rimShorts(found), ...closedFlapBridges(found)];
  const roots = [
    ...joined,
    ...gaps(found),
    ...lampsOffStrip(found),
    ...reversedLamps(found, joined.length > 0),
    ...missedContacts(found),
    ...strokesOutOfOrder(found),
    ...(joined.length > 0 ? [] : [...litTooSoon(found), ...litByAnother(found)]),
    ...nestFindings(found),
    ...scantPatches(found),
  ];
  const explained = new Set(roots.flatMap(({ lamps }) => lamps));
  const open = roots.filter(({ facts }) => facts.unsure === true).flatMap(({ nets }) => nets);
  return [...roots, ...faintBridges(found, joined), ...unfedLamps(found, explained, new Set(open))];
}

/**
 * A remark on the layout at the place of a fault, or of a graver remark, says nothing new. A sure neck does where a gap
 * is only doubted: paper from two sides with copper left between them looks like either.
 */
function told(remark: Finding, before: Finding[]): boolean {
  if (remark.kind === 'near-edge') return false;
  return before.some(
    (each) =>
      (each.certainty >= 0.5 || (each.kind === 'gap' && remark.kind !== 'narrow-neck')) &&
      each.kind !== remark.kind &&
      distance(each.at, remark.at) < reachMm(each, remark),
  );
}

/** Half the widest tape and a little more, mm: so far to its side a gap's two brinks may come nearest. */
const brinksMm = 6;

/** How far round a finding a remark says nothing new, mm. */
function reachMm({ kind, nets, sizeMm = 0 }: Finding, remark: Finding): number {
  const brinks = kind === 'gap' && remark.kind === 'tight' && remark.nets.every((net) => nets.includes(net));
  if (brinks || kind === 'bridge') return brinksMm;
  return Math.max(3, sizeMm / 2 + 1);
}

/** Marks what the maker has checked by hand. */
function settled(finding: Finding, card: Card): Finding {
  const by = card.checked.find(({ kind, at }) => kind === finding.kind && distance(at, finding.at) < 3);
  return by ? { ...finding, checked: { note: by.note } } : finding;
}
