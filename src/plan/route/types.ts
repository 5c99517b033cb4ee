import type { PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';

/** A place that a net must reach, with the short straight piece that leads to it. */
export interface Terminal {
  /** 'cell+', 'L1-', 'C1a' ... */
  pad: string;
  /** Where the copper must end. */
  at: Point;
  /** Where the search joins on; the straight piece from here to `at` belongs to the net. */
  from: Point;
}

export interface RouteNet {
  id: string;
  terminals: Terminal[];
}

/** Places that no strip of some nets may come near. */
export interface Obstacle {
  a: Point;
  b: Point;
  /** Copper keeps this far from the piece a-b. */
  keepMm: number;
  /** Nets that may. */
  except?: string[];
}

export interface RouteTask {
  width: number;
  height: number;
  nets: RouteNet[];
  obstacles: Obstacle[];
  /** Copper keeps this far from the base's edge. */
  edgeMm: number;
}

/** Tape width and clearance tried together. */
export interface Rule {
  widthMm: number;
  clearanceMm: number;
}

/** A place where a strip must cross another net over a paper patch. */
export interface Crossing {
  at: Point;
  nets: [string, string];
}

export interface Routed {
  strips: PlanStrip[];
  crossings: Crossing[];
  rule: Rule;
  /** Whole length of tape, mm, and number of folds. */
  tapeMm: number;
  folds: number;
}
