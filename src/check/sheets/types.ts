import type { CardPhoto, Flap, Patch } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import type { Outline, SquaredSheet } from '../../sheet/index.ts';
import type { Rigid } from './rigid.ts';

/** A further photograph of a card: an earlier one of its base, a flap opened flat, a folded base's inside. */
export interface SheetPhoto {
  photo: Photo;
  given: CardPhoto;
}

/** A further photograph squared up in its own frame. */
export interface PlacedSheet {
  given: CardPhoto;
  outline: Outline;
  sheet: SquaredSheet;
}

/** A further photograph with its copper, still in its own frame. */
export interface ReadSheet extends PlacedSheet {
  seen: CopperMask;
}

/** How a sheet's frame was brought onto the base's. */
export interface Registration {
  /** By corners that it shares with the base, by its fold line, or by copper that both photographs show. */
  by: 'corners' | 'fold' | 'copper';
  /** From the sheet's own frame to the base's, mm. */
  toBase: Rigid;
  /** How far what both sheets show still lies apart, mm: 8 places of 10 lie nearer. */
  residualMm: number;
  /** Where it is worst, on the base. */
  at: Point;
}

/** What became of a further photograph. */
export interface SheetFate {
  name: string;
  /** 'base' or the flap that it shows. */
  sheet: string;
  by: Registration['by'];
  residualMm: number;
  at: Point;
  /** Its corners, px of its photograph. */
  cornersPx: Quad;
  /** How sure its outline is, 0..1. */
  outlineCertainty: number;
  readable: number;
}

/** What laying all sheets of a card together gave, beside the picture. */
export interface JoinedSheets {
  fates: SheetFate[];
  /** Copper that earlier photographs showed where a patch lies now. */
  beneath: Record<Patch['id'], Patch['beneath']>;
  /** Places at which tape that came with a patch runs onto copper that lay there before. */
  seams: Point[];
  /** Flaps that a photograph of their own shows. */
  flaps: Flap['id'][];
  /** Flaps whose copper meets its contacts only when hinged along the other edge; they are laid as if they were. */
  wrongSide: Flap['id'][];
}
