import type { LampColour } from '../../card/index.ts';
import type { Box, Point } from '../../geometry/index.ts';

/** A picture as base64, ready for a page. */
export interface EncodedImage {
  media: 'image/jpeg' | 'image/png';
  base64: string;
  width: number;
  height: number;
}

/** The inks of a proof sheet. */
export type Ink =
  | 'graphite'
  | 'grey'
  | 'faint'
  | 'paper'
  | 'copper'
  | 'foil'
  | 'lamp'
  /** Ground and pencil of a drawing of light. */
  | 'night'
  | 'chalk'
  /** The light of a lamp. */
  | `light ${LampColour}`;

interface Stroke {
  stroke?: Ink;
  /** mm */
  width?: number;
  /** Lengths of dash and space, mm. */
  dash?: readonly [number, number];
  fill?: Ink;
  /** 0..1 */
  opacity?: number;
}

export type Shape =
  /** Polylines or rings, mm; several rings are filled by the even-odd rule. */
  | ({ kind: 'path'; lines: (readonly Point[])[]; closed?: boolean } & Stroke)
  | ({ kind: 'circle'; at: Point; radius: number } & Stroke)
  /** The baseline starts, centres or ends at `at`; size is the letter height (em), mm. */
  | {
      kind: 'text';
      at: Point;
      text: string;
      size: number;
      anchor?: 'start' | 'middle' | 'end';
      bold?: boolean;
      ink?: Ink;
    }
  | { kind: 'image'; box: Box; image: EncodedImage; crop?: Box };

/** A flat drawing in mm; y down. It is shown as SVG or drawn into a PDF. */
export interface Drawing {
  /** What it shows, in words, for those who do not see it. */
  title: string;
  box: Box;
  shapes: Shape[];
}
