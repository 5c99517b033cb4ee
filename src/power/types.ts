import type { CellKind, LampColour } from '../card/index.ts';

/**
 * A lamp as a curve: V(I) = a ln(I/Is + 1) + I R, with a = n kT/q.
 * @source Shockley's equation with a series resistance, as in every SPICE diode model
 */
export interface Diode {
  /** Saturation current Is, A. */
  saturationA: number;
  /** n kT/q, V. */
  slopeV: number;
  /** Series resistance of the chip, ohm. */
  ohm: number;
}

/** A conductor between two nodes: tape, a seam, a contact, a resistor. */
export interface Resistor {
  kind: 'resistor';
  id: string;
  a: string;
  b: string;
  ohm: number;
}

/** A lamp between two nodes, with whatever resistance is in line with it (its resistor, its leg contacts). */
export interface LampElement {
  kind: 'lamp';
  id: string;
  plus: string;
  minus: string;
  diode: Diode;
  seriesOhm: number;
}

/** A cell: open-circuit voltage behind an internal resistance. */
export interface CellElement {
  kind: 'cell';
  id: string;
  plus: string;
  minus: string;
  volt: number;
  ohm: number;
}

export type Element = Resistor | LampElement | CellElement;

/** Elements between named nodes; nothing else is needed to solve it. */
export interface Circuit {
  elements: Element[];
}

/** Why part of a circuit has no answer of its own. */
export interface Trouble {
  kind: 'afloat' | 'cell-shorted' | 'lamp-on-one-node';
  /** Element ids concerned: the lamps of an island, the cell, the lamp. */
  elements: string[];
  nodes: string[];
}

/** The operating point. */
export interface Solution {
  /** Potential of a node, V, against the minus of the first cell of its connected part; 0 for a node that is not there. */
  volts: (node: string) => number;
  /** Current of an element, A: a to b, plus to minus of a lamp, out of the plus of a cell; 0 for one that is not there. */
  amps: (id: string) => number;
  steps: number;
  troubles: Trouble[];
}

/** How bright a current looks. @source bands proposed from bench accounts; common practice, no standard */
export type Band = 'off' | 'faint' | 'dim' | 'good' | 'bright' | 'over';

export interface LampPower {
  mA: number;
  band: Band;
  /** 'dark' under 0.1 mA, 'dim' under 0.5 mA. */
  look: 'lit' | 'dim' | 'dark';
  lit: boolean;
  /** 0..1, how bright it looks beside a lamp at 10 mA (the eye compresses). */
  glow: number;
}

/** Load on the cell against what it is made for. */
export type Load = 'none' | 'within' | 'over-continuous' | 'over-pulse' | 'shorted';

export interface StatePower {
  name: string;
  closed: string[];
  lamps: Record<string, LampPower>;
  cellMA: number;
  terminalVolt: number;
  load: Load;
  troubles: Trouble[];
}

/** How even the lit lamps of a state are. */
export interface Balance {
  state: string;
  brightest: string;
  dimmest: string;
  /** Brightest over dimmest current; Infinity where one that is fed stays dark. */
  ratio: number;
  /** Lamps that would light alone and do not beside the others, and the lamps that take their current. */
  robbed: string[];
  robbers: string[];
}

/** The busiest state as the cell is used up. */
export interface AgeStep {
  charge: number;
  volt: number;
  ohm: number;
  lamps: Record<string, number>;
}

export interface RunTime {
  state: string;
  /** Hours pressed until the dimmest lamp that lit when fresh falls under 0.5 mA, and under 0.1 mA; or the cell is empty. */
  hoursBright: number;
  hoursLit: number;
  /** Presses of five seconds that hoursLit gives. */
  presses: number;
}

export type Advice =
  | {
      kind: 'resistor';
      state: string;
      lamps: string[];
      ohm: number;
      series: 'E12' | 'E24';
      bands: string[];
      ratioBefore: number;
      ratioAfter: number;
      mA: Record<string, number>;
    }
  | { kind: 'split-colours'; state: string; low: string[]; high: string[] }
  | { kind: 'fewer-lamps'; state: string; now: number; most: number; because: 'dim' | 'load' }
  | { kind: 'second-cell'; state: string; mANow: number; mAThen: number }
  | {
      kind: 'limit-current';
      state: string;
      lamps: string[];
      mA: number;
      ohm: number;
      bands: string[];
      mAThen: number;
    }
  | { kind: 'which-green'; lamps: string[] }
  | { kind: 'cell-too-low'; volt: number; lamps: string[] };

/** What part tolerance does to each lamp: mA at the 5th, 50th and 95th percentile. */
export interface Spread {
  state: string;
  seed: number;
  draws: number;
  lamps: Record<string, { low: number; middle: number; high: number; darkShare: number }>;
}

/** How much resistance a joint bears before a lamp goes dark. */
export interface JointNeed {
  /** 'seam@x,y', 'contact C1', 'cell face +', 'legs of L1'. */
  joint: string;
  kind: JointKind;
  at?: readonly [number, number];
  state: string;
  /** Lit lamps that are first to fall under 0.5 mA, and at what resistance of the joint, ohm. */
  dims: string[];
  dimOhm: number;
  /** Lit lamps that are first to fall under 0.1 mA. */
  darkens: string[];
  darkOhm: number;
}

export type JointKind = 'seam' | 'contact' | 'lamp-leg' | 'cell-face';

export interface PowerReport {
  /** The cell as reckoned with; absent, nothing is fed. */
  cell?: {
    kind: CellKind;
    charge: number;
    volt: number;
    ohm: number;
    capacityMAh: number;
    continuousMA: number;
    pulseMA: number;
  };
  colours: Partial<Record<LampColour, string[]>>;
  states: StatePower[];
  /** Per state with two lit lamps or more. */
  balance: Balance[];
  ageing: AgeStep[];
  runTime?: RunTime;
  advice: Advice[];
  spread?: Spread;
  joints: JointNeed[];
  tape: {
    widthMm: number;
    lengthMm: number;
    thicknessMm: number;
    ohm: number;
    splitOhm: number;
    /** Greatest relative change of any lamp's current when every strip is split lengthwise. */
    change: number;
  };
}
