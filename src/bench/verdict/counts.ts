import { holds, type Finding } from '../../net/index.ts';

export interface Counts {
  /** Sure faults still open. */
  holding: number;
  /** What is left to settle by hand. */
  toCheck: number;
}

/** How many findings stand in the way of which verdict. */
export function countsOf(findings: readonly Finding[]): Counts {
  const open = findings.filter(({ checked }) => !checked);
  const holding = open.filter(holds).length;
  const toCheck = open.filter((finding) => finding.weight !== 'note' && !holds(finding)).length;
  return { holding, toCheck };
}
