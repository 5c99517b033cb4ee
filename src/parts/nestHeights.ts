import type { Card, CellKind } from '../card/index.ts';
import { insideRing } from '../geometry/index.ts';

/** Greatest heights, mm: IEC 60086-2 by the size code (the last two digits, in 0.1 mm); LR44 from memory of the same. */
export const cellHeightMm: Record<CellKind, number> = {
  CR2032: 3.2,
  CR2025: 2.5,
  CR2016: 1.6,
  CR1620: 2.0,
  CR1225: 2.5,
  LR44: 5.4,
};

/** Foam stands so much higher than the cell that the flap opens by itself (common practice, no source). */
const springMm = 0.3;
/** A finger presses foam tape to about half its height (common practice, no source). */
const pressedShare = 0.5;

/** Foam round the cell against the cell's height. */
export interface NestHeights {
  cellMm: number;
  foamMm: number;
  /** The flap stands clear of the cell while nobody presses. */
  clearAtRest: boolean;
  /** Pressed, the flap reaches the cell. */
  touchesPressed: boolean;
}

/** @returns undefined where no foam is planned within 25 mm of the cell */
export function nestHeights({ cell, plan }: Pick<Card, 'cell' | 'plan'>): NestHeights | undefined {
  if (!cell) return undefined;
  const near = (plan?.foam ?? []).filter(
    ({ outline }) =>
      insideRing(cell.at, outline) ||
      outline.some(([x, y]) => Math.hypot(x - cell.at[0], y - cell.at[1]) <= 25),
  );
  if (near.length === 0) return undefined;
  const foamMm = Math.max(...near.map(({ layers, layer_mm }) => layers * layer_mm));
  const cellMm = cellHeightMm[cell.kind];
  return {
    cellMm,
    foamMm,
    clearAtRest: foamMm >= cellMm + springMm,
    touchesPressed: foamMm * pressedShare <= cellMm,
  };
}
