import type { Finding } from '../types.ts';
import { certaintyBy } from './curve.ts';
import { fitted } from './fitted.ts';

/** Where the picture leaves it open the answer is "can't tell", which never holds. */
const cannotTell = 0.49;
/** From here on a gap holds the verdict; below it asks for a look. */
const holdsFrom = 0.5;

/**
 * The finding with the certainty that its evidence was worth on photographs with truth. Kinds and sorts of evidence of
 * which too few were seen keep what their rule gives. Done twice it changes nothing.
 */
export function certain(finding: Finding): Finding {
  const evidence = finding.evidence ?? { by: '', value: finding.certainty };
  const curve = fitted[classOf(finding.kind, evidence.by)];
  const bound = finding.facts.unsure === true ? cannotTell : 1;
  const certainty = Math.min(bound, curve ? certaintyBy(curve, evidence.value) : evidence.value);
  return { ...finding, evidence, certainty, weight: weightOf(finding, certainty) };
}

/** Findings that are fitted together: of one kind and, where it says, one sort of evidence. */
export function classOf(kind: Finding['kind'], by: string): string {
  return by ? `${kind}/${by}` : kind;
}

function weightOf({ kind, weight }: Finding, certainty: number): Finding['weight'] {
  if (kind !== 'gap') return weight;
  return certainty >= holdsFrom ? 'holds' : 'check';
}
