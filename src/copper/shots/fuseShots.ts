import type { SquaredSheet } from '../../sheet/index.ts';
import { FoilproofError } from '../../words/index.ts';
import { copperWords } from '../../words/copper.ts';
import { align } from './align.ts';
import { valueWithin } from './plane.ts';
import { copperLook, outstanding, type CopperLook } from './copperLook.ts';
import { hiddenCopper } from './hiddenCopper.ts';
import { layOver } from './layOver.ts';
import { farthest, resized } from './smoothMove.ts';

/** px/mm at which shots are aligned and compared. */
const coarse = 2.5;
/** mm: the greatest displacement, and the misfit above which a shot is left out. */
const mostMoved = 3;
const worstFit = 0.2;

/** Several shots of one sheet made into one. */
export interface FusedShots {
  sheet: SquaredSheet;
  /** For each shot: is it in the result, how far it had to be moved at most, and how well it then fitted, mm. */
  shots: { used: boolean; movedMm: number; misfitMm: number }[];
}

/**
 * Fuses shots of one sheet that were taken from different places or with the lamp moved. Each is brought over the first.
 * The first stays; only where it shows paper or is burnt out and another shows copper is the other taken: glare moves
 * away, and where all show paper, as in a true gap, paper stays.
 * @param sheets of one size and scale, squared on the same base
 * @throws FoilproofError when the sizes differ
 */
export function fuseShots(sheets: readonly SquaredSheet[]): FusedShots {
  const [first, ...others] = sheets;
  if (!first) throw new FoilproofError(copperWords.noShots);
  for (const other of others) {
    if (other.width !== first.width || other.height !== first.height || other.pxPerMm !== first.pxPerMm)
      throw new FoilproofError(copperWords.shotsDiffer);
  }
  const shots: FusedShots['shots'] = [{ used: true, movedMm: 0, misfitMm: 0 }];
  const shrink = Math.max(1, Math.round(first.pxPerMm / coarse));
  const scale = first.pxPerMm / shrink;
  const look = copperLook(first, shrink);
  let sheet = first;
  for (const other of others) {
    const { move, misfitMm } = align(outstanding(look), outstanding(copperLook(other, shrink)), scale);
    const movedMm = farthest(move) / scale;
    const used = misfitMm <= worstFit && movedMm <= mostMoved;
    shots.push({ used, movedMm, misfitMm });
    if (used) sheet = heal(sheet, look, layOver(other, resized(move, first.width, first.height)), shrink);
  }
  return { sheet, shots };
}

/** The sheet with what the first shot hides taken from another one, its light brought to the first one's. */
function heal(sheet: SquaredSheet, first: CopperLook, other: SquaredSheet, shrink: number): SquaredSheet {
  const { width, height } = sheet;
  const over = copperLook(other, shrink);
  const hidden = hiddenCopper(first, over, sheet.pxPerMm / shrink);
  const plane = { ...over.unlike, values: hidden };
  const gains = gainsOf(first, over);
  const { cell, columns, rows } = first.paper;
  const rgb = sheet.rgb.slice();
  for (let j = 0, k = 0; j < height; j++) {
    const row = Math.min(rows - 1, Math.floor(j / shrink / cell)) * columns;
    for (let i = 0; i < width; i++, k += 3) {
      const share = valueWithin(plane, (i + 0.5) / shrink - 0.5, (j + 0.5) / shrink - 0.5);
      if (share === 0) continue;
      const n = row + Math.min(columns - 1, Math.floor(i / shrink / cell));
      for (let c = 0; c < 3; c++) {
        const light = Math.min(255, other.rgb[k + c] * gains[c][n]);
        rgb[k + c] = rgb[k + c] * (1 - share) + light * share + 0.5;
      }
    }
  }
  return { ...sheet, rgb };
}

/** How much lighter the paper of the first shot is, per cell, for red, green and blue. */
function gainsOf({ paper: a }: CopperLook, { paper: b }: CopperLook): Float32Array[] {
  const gain = (p: Float32Array, q: Float32Array): Float32Array => p.map((v, n) => v / Math.max(0.05, q[n]));
  return [gain(a.fx, b.fx), gain(a.fy, b.fy), gain(a.fz, b.fz)];
}
