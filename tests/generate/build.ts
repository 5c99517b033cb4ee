import type { CardInput, FindingKind } from '../../src/card/index.ts';
import type { Point, Ring } from '../../src/geometry/index.ts';

/** One tape as laid. Places in mm on the base. */
export interface BuiltStrip {
  id: string;
  net: string;
  widthMm: number;
  path: Point[];
  /** Pieces cut out across it. */
  cuts: { at: Point; widthMm: number; skew: number }[];
  /** Nibbled from both sides to this width. */
  necks: { at: Point; widthMm: number; lengthMm: number }[];
  /** Left out of the half-built base. */
  absent?: boolean;
}

/** A scrap of copper that should not be there. */
export interface Sliver {
  ring: Ring;
}

export interface BuiltLamp {
  id: string;
  at: Point;
  /** Unit vector from the + pad to the - pad. */
  axis: Point;
  colour: 'white' | 'warm-white';
  /** Distance of each pad's middle from the lamp's, mm. */
  padMm: number;
}

/** A fault that was planted, and the finding that should tell it. */
export interface Planted {
  kind: FindingKind;
  at: Point;
  sizeMm?: number;
  lamp?: string;
  nets?: string[];
}

export interface Build {
  base: { width_mm: number; height_mm: number };
  /** In the order of laying; a patch covers what was laid before it. */
  strips: BuiltStrip[];
  /** Index in `strips` before which the patch was laid. */
  patch: { id: string; ring: Ring; before: string };
  slivers: Sliver[];
  lamps: BuiltLamp[];
  cell: { at: Point; present: boolean };
  contacts: { id: string; at: Point; order: number }[];
  pencil: Point[][];
  planted: Planted[];
  /** How far the plan of a strip lies from where it was laid, mm. */
  planMoves?: Record<string, Point>;
  card: CardInput;
}
