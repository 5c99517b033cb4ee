import { cellKinds } from '../../card/index.ts';
import type { Card, CellKind } from '../../card/index.ts';
import { cellDiameterMm } from '../../parts/index.ts';
import type { Disc } from '../../parts/labels/index.ts';
import type { Suggested } from '../../parts/suggest/index.ts';
import { cellDiametersMm } from '../../sheet/index.ts';

/** The circle that is seen is the card's cell where their middles lie this near, as a share of its diameter. */
const sameShare = 0.35;
/** A kind fits a circle that is wider or narrower than it by no more than this share. */
const mostOff = 0.08;

export interface CellFace {
  disc: Disc;
  /** Kinds of about this diameter. */
  fits: readonly CellKind[];
}

/** Where a cell's face may be read: the circle that is seen, else where the card has its cell. */
export function cellFace(card: Card, { cell: seen }: Suggested): CellFace | undefined {
  const laid = card.cell?.on === 'base' ? card.cell : undefined;
  const isSame = (at: Disc['at']) =>
    seen !== undefined && Math.hypot(seen.at[0] - at[0], seen.at[1] - at[1]) < sameShare * seen.diameterMm;
  if (seen && (!card.cell || (laid && isSame(laid.at)))) {
    const range = [seen.diameterMm, ...seen.rangeMm];
    const [least, most] = [Math.min(...range) * (1 - mostOff), Math.max(...range) * (1 + mostOff)];
    const fits = cellKinds.filter(
      (kind) => cellDiametersMm[kind][1] > least && cellDiametersMm[kind][0] < most,
    );
    return { disc: seen, fits };
  }
  return laid && { disc: { at: laid.at, diameterMm: cellDiameterMm[laid.kind] }, fits: cellKinds };
}
