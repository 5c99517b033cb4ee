import type { Card } from '../../card/index.ts';
import { checkScaleByCell } from '../../sheet/index.ts';
import type { ScaleCheck } from '../../sheet/index.ts';
import type { Suggested } from './types.ts';

/** The circle is the card's cell where their middles lie this near, as a share of its diameter. */
const sameShare = 0.35;
/** A rim less certain than this measures nothing: the border of its shadow may be taken for it. */
const leastCertain = 0.75;

export interface CellScale extends ScaleCheck {
  /** As measured on the squared sheet, mm. */
  diameterMm: number;
}

/**
 * Checks the scale of the sheet by the cell that the card declares, where its rim is seen.
 * A warning is given only if no circle that could be the rim agrees.
 */
export function scaleByCell(card: Card, { cell }: Suggested): CellScale | undefined {
  if (!card.cell || card.cell.on !== 'base' || !cell || cell.certainty < leastCertain) return undefined;
  const off = Math.hypot(cell.at[0] - card.cell.at[0], cell.at[1] - card.cell.at[1]);
  if (off > sameShare * cell.diameterMm) return undefined;
  const { kind } = card.cell;
  const tries = [cell.diameterMm, ...cell.rangeMm].map((diameterMm) => ({
    diameterMm,
    ...checkScaleByCell(diameterMm, kind),
  }));
  return tries.find(({ agrees }) => agrees) ?? tries[0];
}
