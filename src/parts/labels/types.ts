import type { CellKind } from '../../card/index.ts';
import type { Box, Point } from '../../geometry/index.ts';

/** A line of ink on the sheet that may be text, mm. */
export interface TextBox {
  box: Box;
  /** Ink heights within, mm. */
  heightMm: number;
  /** Bare paper lies all round it. */
  clear: boolean;
}

/** What a line of ink was read as. */
export interface Label {
  text: string;
  /** 0..1. */
  certainty: number;
  at: Point;
  box: Box;
  means: LabelMeaning;
}

export type LabelMeaning =
  | { kind: 'lamp'; id: string }
  | { kind: 'polarity'; sign: '+' | '-' }
  /** `onFace`: read off the cell itself, whose marked face is its +. */
  | { kind: 'cell'; cell: CellKind; onFace?: boolean }
  | { kind: 'tag'; code: string }
  | { kind: 'title'; title: string }
  | { kind: 'nothing' };

/** What is known before reading: it tells one reading from another, and what stands on the sheet for other parts. */
export interface KnownNames {
  /** Lamps of the card and of its plan. */
  lamps: readonly string[];
  /** The tag of the card's own plan, where it has one. */
  tag?: string;
  /** Contacts, patches, flaps, holes: their names are no lamp's. */
  others: readonly string[];
  /** Gives a plan tag in its own spelling, when a text is one. */
  tagIn(text: string): string | undefined;
}
