import type { CellKind } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';

/** A lamp's body as seen, proposed as a lamp. Which end is + no body tells: the maker flips what lies wrong. */
export interface SuggestedLamp {
  plus: Point;
  minus: Point;
  /** 0..1: the chance that there is a lamp. */
  certainty: number;
}

/** A coin cell as seen by its circle. */
export interface SuggestedCell {
  at: Point;
  /** Diameter as measured on the squared sheet, mm. */
  diameterMm: number;
  /** Least and greatest diameter that it may have as well: bevel, rim and shadow lie close together, mm. */
  rangeMm: readonly [least: number, greatest: number];
  /** The kind whose diameter is nearest; heights cannot be seen from above. */
  kind: CellKind;
  /** 0..1: the chance that there is a cell, and that the circle is its rim. */
  certainty: number;
}

/** Parts seen on the sheet, for the maker to accept one by one. */
export interface Suggested {
  lamps: SuggestedLamp[];
  cell?: SuggestedCell;
}
