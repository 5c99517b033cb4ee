import type { FindingKind } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';

/** What a finding does to the verdict: holds it, asks for a check by hand, or is only worth knowing. */
export type Weight = 'holds' | 'check' | 'note';

export interface Evidence {
  by: string;
  value: number;
}

/** One thing that the check has to say. Words are made from it in record/. */
export interface Finding {
  kind: FindingKind;
  at: Point;
  /** mm: gap width, clearance, miss, neck width ...; undefined where no size belongs. */
  sizeMm?: number;
  /** 0..1, calibrated on photographs with truth. Under 0.5 it says "look here" and never holds the verdict. */
  certainty: number;
  /** What the certainty was made of: by which sort of sign, where the kind has several, and how strong it was, 0..1. */
  evidence?: Evidence;
  weight: Weight;
  lamps: string[];
  nets: string[];
  /** Sheet it lies on: 'base', a flap's or a patch's id. */
  sheet: string;
  /** Kind-specific values for the sentence, e.g. { direction: 'left', of: 'C2' }. */
  facts: Record<string, string | number | boolean>;
  /** The maker has settled it by hand. */
  checked?: { note: string };
}

export interface Net {
  id: string;
  pieces: number[];
  /** 'cell+', 'cell-', 'L1+', 'L1-', 'C1a', 'C1b' ... */
  pads: string[];
  areaMm2: number;
}

/** A lamp in a state. */
export interface LampState {
  lit: boolean;
  mA: number;
  look: 'lit' | 'dim' | 'dark';
}

export interface State {
  name: string;
  /** Contacts that are closed, 'cell' meaning the cell is pressed. */
  closed: string[];
  /** Nets of the whole sheet joined in this state: each inner list is one electrical node. */
  nodes: string[][];
  shorted: boolean;
}

/** pieces + joins + parts, and what follows from them. */
export interface Netlist {
  nets: Net[];
  /** Net of each pad; a pad on no copper is absent. */
  netOf: Record<string, string>;
  states: State[];
  /** Cuts within one piece that the mask runs over: there the piece does not conduct along its strip. */
  cuts?: { piece: number; at: Point; widthMm: number }[];
  findings: Finding[];
  notSeen: string[];
}
