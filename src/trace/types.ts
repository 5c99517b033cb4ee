import type { Box, Point, Polygon } from '../geometry/index.ts';

/** A free end of a strip. */
export interface StripEnd {
  piece: number;
  at: Point;
  /** Unit vector pointing out of the strip, along its axis. */
  out: Point;
  widthMm: number;
}

/** The narrowest place between two wide stretches of a piece. */
export interface Neck {
  piece: number;
  at: Point;
  widthMm: number;
  /** Usual width of the strip around it. */
  usualMm: number;
  /** 0..1: how sure the copper left is, and the share of what is missing beside it that looks like the paper round it; absent where no picture tells. */
  sure?: number;
  paper?: number;
}

/** One stretch of a centre-line between junctions or ends. */
export interface CentreLine {
  piece: number;
  path: Point[];
  /** Full width of the copper at each path point, mm. */
  widths: number[];
  lengthMm: number;
}

/** One connected copper region. Ids are 1..n and equal the label in `Traced.labels`. */
export interface Piece {
  id: number;
  areaMm2: number;
  box: Box;
  outline: Polygon;
  /** Median full width, mm. */
  widthMm: number;
  /** 0..1: how sure the trained net is that it is copper, in the mean; 1 where the mask is not the net's. */
  sure: number;
  lines: CentreLine[];
  ends: StripEnd[];
}

/** Two pieces (or two stretches of one) nearest each other. */
export interface Clearance {
  a: number;
  b: number;
  /** Nearest places on a and on b. */
  atA: Point;
  atB: Point;
  mm: number;
}

/** A line seen across a strip, with what the profiles across it say. */
export interface Crossing {
  at: Point;
  /** Piece it lies on. */
  piece: number;
  /** The piece across it, where the filled mask is open there: two facing ends. */
  other?: number;
  /** Width of the crossing along the strip, mm. */
  widthMm: number;
  /** Unit vector along the strip there and the strip's own width, mm, where the profiles tell them. */
  along?: Point;
  stripMm?: number;
  /** Only its lightness speaks for a cut, as where it is too fine for the photograph to keep its colour. */
  fine?: boolean;
  /** The copper stage saw it as a cut right across the strip, and the mask is open there. */
  opened?: boolean;
  /** Probabilities, summing to at most 1. */
  gap: number;
  seam: number;
  glare: number;
}

/** A thin line from one piece to another that may be copper, though too faint for the mask. */
export interface FaintJoin {
  /** Its middle, and on the copper at its two ends, mm. */
  at: Point;
  atA: Point;
  atB: Point;
  mm: number;
  widthMm: number;
  /** 0..1: how likely it is copper, by its own pixels. */
  chance: number;
}

/** Cells of the sheet, 1 = burnt out or black: what lies there the picture does not tell. Row-major. */
export interface BlindMap {
  columns: number;
  rows: number;
  cellMm: number;
  originMm: Point;
  cells: Uint8Array;
}

/** Colours of what is no copper, by cells of the sheet, row-major. */
export interface OpenCells {
  columns: number;
  rows: number;
  cellMm: number;
  originMm: Point;
  /** Mean L*, a*, b* of the open part of each cell; L* is NaN where too little of it is open. */
  lab: [Float32Array, Float32Array, Float32Array];
}

/** Copper under a lamp, cell or patch that splits what the mask shows. */
export interface Traced {
  width: number;
  height: number;
  pxPerMm: number;
  originMm: Point;
  baseMm: { width: number; height: number };
  /** Piece id of each pixel, 0 = no copper; row-major. */
  labels: Int32Array;
  pieces: Piece[];
  necks: Neck[];
  clearances: Clearance[];
  crossings: Crossing[];
  faint?: FaintJoin[];
  /** The narrowest gap that this photograph can show, mm. */
  smallestGapMm: number;
  /** Absent where no picture was given. */
  blind?: BlindMap;
  open?: OpenCells;
  /** On and about lamps' bodies what the picture shows of each pixel, row-major; absent where no net saw the sheet. */
  lampLook?: Uint8Array;
}
