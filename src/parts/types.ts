import type { Point } from '../geometry/index.ts';

/** Where one pad meets copper. */
export interface PadPlace {
  /** 'cell+', 'L1-', 'C1a' ... */
  pad: string;
  at: Point;
  /** Piece it lies on, 0 = none within reach. */
  piece: number;
  /** Distance from the pad to that piece (or, with none, to the nearest copper on its side), mm; Infinity = none near. */
  mm: number;
  /** 0..1: how sure the answer is. */
  certainty: number;
}

/** All pads of a card laid on the traced copper. */
export interface Attached {
  pads: PadPlace[];
  /** Pieces within the cell's disc or ending at its rim. */
  underCell: number[];
}
