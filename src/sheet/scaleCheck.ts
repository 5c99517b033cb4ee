import type { CellKind } from '../card/index.ts';
import { length } from '../words/lengths.ts';
import { sheetWords } from '../words/sheet.ts';

/**
 * Least and greatest diameters of coin cells, mm.
 * @source IEC 60086-2 (lithium) and IEC 60086-3 (LR44); the lower limits of CR2025 to CR1225 are from memory
 */
export const cellDiametersMm: Readonly<Record<CellKind, readonly [least: number, greatest: number]>> = {
  CR2032: [19.7, 20.0],
  CR2025: [19.7, 20.0],
  CR2016: [19.7, 20.0],
  CR1620: [15.7, 16.0],
  CR1225: [12.2, 12.5],
  LR44: [11.25, 11.6],
};

export interface ScaleCheck {
  /** Seen over true diameter; 1 = the scale agrees. */
  ratio: number;
  agrees: boolean;
  /** Warning for the maker, when it does not agree. */
  say?: string;
}

/** Beyond this disagreement the base size or a corner must be wrong: limits (1.5 %) and parallax (1 %) are less. */
const mostOff = 0.03;

/**
 * Checks the sheet's scale by the cell that lies on it.
 * @param seenMm the cell's diameter as measured on the squared sheet
 * @param kind of the cell
 */
export function checkScaleByCell(seenMm: number, kind: CellKind): ScaleCheck {
  const [least, greatest] = cellDiametersMm[kind];
  const nearest = Math.min(Math.max(seenMm, least), greatest);
  const off = seenMm / nearest - 1;
  const ratio = seenMm / ((least + greatest) / 2);
  if (Math.abs(off) <= mostOff) return { ratio, agrees: true };
  const percent = (100 * Math.abs(off)).toFixed(0);
  return {
    ratio,
    agrees: false,
    say: sheetWords.scaleOff(percent, length(seenMm), kind, length(greatest)),
  };
}
