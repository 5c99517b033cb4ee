import type { LearnedMap } from '../../copper/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { findCell } from './findCell.ts';
import { findLamps } from './findLamps.ts';
import type { Suggested } from './types.ts';

/** Parts less certain than this are not worth the maker's tap. */
const leastCertain = 0.35;

/**
 * Lamps and the cell as the photograph shows them, for the maker to accept. Nothing of it enters the net by itself.
 * @param learned what the trained net sees; without it no lamp is proposed
 */
export function suggestParts(sheet: SquaredSheet, learned: LearnedMap | undefined): Suggested {
  const cell = findCell(sheet, learned?.cell);
  const sure = cell && cell.certainty >= leastCertain ? cell : undefined;
  const lamps = learned ? findLamps(sheet, learned.lamp) : [];
  return {
    lamps: lamps.filter((lamp) => lamp.certainty >= leastCertain && !(sure && onCell(lamp, sure))),
    ...(sure ? { cell: sure } : {}),
  };
}

/** Glints on a cell look like lamps. */
function onCell(
  { plus, minus }: Suggested['lamps'][number],
  { at, diameterMm }: NonNullable<Suggested['cell']>,
) {
  const off = Math.hypot((plus[0] + minus[0]) / 2 - at[0], (plus[1] + minus[1]) / 2 - at[1]);
  return off < diameterMm / 2;
}
