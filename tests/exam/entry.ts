import type { Card, FindingKind } from '../../src/card/index.ts';
import type { Point, Quad } from '../../src/geometry/index.ts';

/** A fault that is truly there. */
export interface TrueFault {
  kind: FindingKind;
  /** The faults' places: a point, or a whole strip. A finding within the tolerance of any of it is right. */
  path: Point[];
  sizeMm?: number;
}

/** Truth of where copper is seen, in the base's frame at 10 px/mm, or in the photograph's pixels. */
export interface TrueMask {
  frame: 'base' | 'photo';
  width: number;
  height: number;
  /** 1 = copper. */
  copper: Uint8Array;
  /** 1 = counts; absent when all does. */
  valid?: Uint8Array;
}

/** One photograph of an exam with what is true of it. */
export interface Entry {
  name: string;
  photoPath: string;
  /** A further shot of the same sheet. */
  againPath?: string;
  card: Card;
  cornersPx?: Quad;
  /** True radial distortion, as in `Outline`. */
  k1?: number;
  mask: TrueMask;
  /** Absent where only the mask is known. */
  faults?: TrueFault[];
  /** Places where a fault's consequences are no false alarm, e.g. a lamp that a shifted strip leaves bare. */
  excused?: TrueFault[];
  seams?: Point[];
  conditions: Record<string, string>;
}
