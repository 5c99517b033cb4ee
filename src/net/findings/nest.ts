import { nestHeights } from '../../parts/index.ts';
import type { Case } from '../case.ts';
import type { Finding } from '../types.ts';

/** Foam too low, so that the flap rests on the cell, or so high that no finger brings it down. */
export function nestFindings({ card }: Case): Finding[] {
  const heights = nestHeights(card);
  if (!heights || !card.cell || (heights.clearAtRest && heights.touchesPressed)) return [];
  const { clearAtRest, foamMm, cellMm } = heights;
  return [
    {
      kind: clearAtRest ? 'missed-contact' : 'lit-at-rest',
      at: card.cell.at,
      sizeMm: foamMm,
      certainty: 0.8,
      weight: 'holds',
      lamps: [],
      nets: [],
      sheet: 'base',
      facts: { foam: foamMm, cell: cellMm, of: 'nest' },
    },
  ];
}
