import type { Point } from '../../geometry/index.ts';
import type { Finding } from '../../net/index.ts';

/** How a planned strip stands in the build. */
export type Standing = 'laid' | 'partly' | 'shifted' | 'to-lay' | 'unseen' | 'blind';

export interface StripStanding {
  id: string;
  net: string;
  standing: Standing;
  /** Share of its visible length that is copper where the plan has it (after its shift), 0..1. */
  covered: number;
  /** How far it lies from its plan, mm; [0, 0] unless shifted. */
  shiftMm: Point;
}

export interface PlanComparison {
  strips: StripStanding[];
  /** "7 of 11 strips laid"; a strip laid beside its place is laid, one that is not seen counts in neither. */
  progress: { laid: number; of: number };
  /** Fewer strips laid than a finished card would have: what is not laid yet is still to lay, not a fault. */
  halfBuilt: boolean;
  findings: Finding[];
}
