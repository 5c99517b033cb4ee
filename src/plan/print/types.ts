import type { Point, Ring } from '../../geometry/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';

export type PrintPaper = 'a4' | 'letter';

/** Paper in mm. @source ISO 216 (A4); ANSI/ASME Y14.1 (Letter, 8.5 x 11 in) */
export const paperMm: Record<PrintPaper, readonly [width: number, height: number]> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
};

/** Two faces of one family as font files, embedded into the document. */
export interface PrintFonts {
  regular: Uint8Array;
  bold: Uint8Array;
}

export interface PrintOptions {
  paper: PrintPaper;
  fonts: PrintFonts;
  /** Written into the document; the same card and time give the same bytes. */
  made: Date;
  /** Width of the tape on the roll, mm; narrower strips are split from it along its length. */
  rollMm?: number;
}

/** A strip on a template. */
export interface DrawnStrip extends Ribbon {
  id: string;
  net: string;
  order: number;
}

/** One thing to print at its true size: an outline and what lies on it, in the sheet's own mm. */
export interface Template {
  title: string;
  note: string;
  /** The sheet's corner of least x and y, and its size. */
  origin: Point;
  width: number;
  height: number;
  /** Seen from behind: everything is mirrored left to right about the sheet's middle. */
  mirrored: boolean;
  outline: Ring;
  folds: (readonly [Point, Point])[];
  strips: DrawnStrip[];
  lamps: { id: string; plus: Point; minus: Point }[];
  cell?: { at: Point; diameterMm: number; up: '+' | '-' };
  contacts: { id: string; at: Point }[];
  patches: { id: string; outline: Ring }[];
  holes: { id: string; at: Point; diameterMm: number }[];
  foam: { outline: Ring; label: string }[];
  tag?: string;
}
