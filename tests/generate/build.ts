import type { CardInput, FindingKind } from '../../src/card/index.ts';
import type { Point, Ring } from '../../src/geometry/index.ts';
import type { CellMarking } from './marking.ts';

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

/** Insulating paper that was laid before a strip: its id, or one that no strip has where it is not laid yet. */
export interface BuiltPatch {
  id: string;
  ring: Ring;
  before: string;
}

/** What is printed on the paper: its grey, 255 where none, at the grid's pixels a mm. */
export interface Print {
  width: number;
  height: number;
  grey: Uint8Array;
}

export interface Build {
  base: { width_mm: number; height_mm: number };
  /** In the order of laying; a patch covers what was laid before it. */
  strips: BuiltStrip[];
  patch: BuiltPatch;
  /** Further patches. */
  morePatches?: BuiltPatch[];
  slivers: Sliver[];
  lamps: BuiltLamp[];
  cell: { at: Point; present: boolean; marking?: CellMarking };
  contacts: { id: string; at: Point; order: number }[];
  pencil: Point[][];
  print?: Print;
  planted: Planted[];
  /** How far the plan of a strip lies from where it was laid, mm. */
  planMoves?: Record<string, Point>;
  card: CardInput;
}
