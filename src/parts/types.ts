import type { Point } from '../geometry/index.ts';
import type { FlapMeeting } from './flapContact.ts';

/** Where one pad meets copper. */
export interface PadPlace {
  /** 'cell+', 'L1-', 'C1a' ... */
  pad: string;
  /** The pad's own place for a lamp, the copper's for the cell and contacts. */
  at: Point;
  /** Middle of a lamp: copper beyond it is the other pad's. */
  middle?: Point;
  /** Piece it lies on, 0 = none within reach. */
  piece: number;
  /** Distance from the pad to that piece (or, with none, to the nearest copper on its side), mm; Infinity = none near. */
  mm: number;
  /** 0..1: how sure the answer is. */
  certainty: number;
}

/** Copper that the cell's lower face rests on. */
export interface NestPiece {
  piece: number;
  /** Middle of what lies under the disc, or the end at its rim. */
  at: Point;
  /** Seen under the disc; 0 where the strip ends at the rim and points inward. */
  areaMm2: number;
}

/** All pads of a card laid on the traced copper. */
export interface Attached {
  pads: PadPlace[];
  nest: NestPiece[];
  /** How the copper of closed flaps meets the strips of their contacts. */
  meetings: FlapMeeting[];
}
