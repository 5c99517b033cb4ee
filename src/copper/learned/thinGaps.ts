import { closeSquare } from '../closeSquare.ts';

/** Half the widest break that is looked for, mm. */
const reachMm = 1;
/** A break is where the chance, sure on both sides, falls below the second figure; 0..255. */
const sureBeside = 215;
const doubtful = 190;
/** What a break is set to. */
const open = 69;

/**
 * Opens breaks that the fine map shows as a thin valley in sure copper but that the mean of scales has closed.
 * @param seen the mean map, changed in place
 * @param fine the map at full scale
 */
export function openThinGaps(
  seen: Uint8Array,
  fine: Uint8Array,
  width: number,
  height: number,
  pxPerMm: number,
): void {
  const sure = new Uint8Array(fine.length);
  for (let k = 0; k < sure.length; k++) if (fine[k] > sureBeside) sure[k] = 1;
  const closed = closeSquare(sure, width, height, Math.round(reachMm * pxPerMm));
  for (let k = 0; k < seen.length; k++) if (closed[k] && fine[k] < doubtful && seen[k] > open) seen[k] = open;
}
