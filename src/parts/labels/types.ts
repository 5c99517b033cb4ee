import type { Box, Point } from '../../geometry/index.ts';

/** A line of ink on the sheet that may be text, mm. */
export interface TextBox {
  box: Box;
  /** Ink heights within, mm. */
  heightMm: number;
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
  | { kind: 'cell'; cell: string }
  | { kind: 'tag'; code: string }
  | { kind: 'title'; title: string }
  | { kind: 'nothing' };
