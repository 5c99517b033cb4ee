import type { SquaredSheet } from '../../sheet/index.ts';
import { FoilproofError } from '../../words/index.ts';
import { copperWords } from '../../words/copper.ts';
import { rootPlanes } from '../lab.ts';
import { paperField, type PaperField } from '../paper.ts';
import { rootOf } from '../lab.ts';
import { unlikePaper } from '../scores.ts';
import { fitAffine, type Affine } from './affine.ts';
import { blockShifts } from './blockShifts.ts';

/** px/mm at which shots are aligned. */
const coarse = 2.5;
/** mm: a block's side, the greatest displacement, and the misfit above which a shot is left out. */
const block = 12;
const farthest = 2.5;
const worstFit = 0.25;
/** Cube root of light from which on a pixel is burnt out and tells nothing. */
const burntRoot = 0.985;

/** Several shots of one sheet made into one. */
export interface FusedShots {
  sheet: SquaredSheet;
  /** For each shot: is it in the result, how far it had to be moved at most, and how well it then fitted, mm. */
  shots: { used: boolean; movedMm: number; misfitMm: number }[];
}

/**
 * Fuses shots of one sheet that were taken from slightly different places or with the lamp moved. Each is brought over
 * the first; at each place the shot counts that is least like paper and not burnt out: glare moves away, and where all
 * show paper, as in a true gap, paper stays.
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
  const shrink = Math.max(1, Math.round(first.pxPerMm / coarse));
  const scale = first.pxPerMm / shrink;
  const views = sheets.map((sheet) => {
    const small = rootPlanes(sheet.rgb, sheet.width, sheet.height, shrink);
    return { sheet, small, paper: paperField(small, Math.round(3.2 * scale), 5) };
  });
  const [reference] = views;
  const { width, height } = reference.small;
  const shots: FusedShots['shots'] = [{ used: true, movedMm: 0, misfitMm: 0 }];
  const layers: Layer[] = [{ ...reference, affine: [0, 0, 0, 0, 0, 0] }];
  for (const view of views.slice(1)) {
    const reach = Math.round(farthest * scale);
    const side = Math.round(block * scale);
    const shifts = blockShifts(reference.small.fy, view.small.fy, width, height, side, reach);
    const fit = fitAffine(shifts);
    const misfitMm = fit ? fit.residual / scale : Infinity;
    const used = misfitMm <= worstFit;
    shots.push({ used, misfitMm, movedMm: fit ? moved(fit.affine, width, height) / scale : 0 });
    if (!fit || !used) continue;
    const [a, b, c, d, e, f] = fit.affine;
    layers.push({ ...view, affine: [a * shrink, b, c, d * shrink, e, f] });
  }
  return { sheet: { ...first, rgb: fuse(layers, shrink) }, shots };
}

interface Layer {
  sheet: SquaredSheet;
  paper: PaperField;
  affine: Affine;
}

const moved = ([a, b, c, d, e, f]: Affine, width: number, height: number): number =>
  Math.max(
    ...[0, width].flatMap((x) => [0, height].map((y) => Math.hypot(a + b * x + c * y, d + e * x + f * y))),
  );

/** Picks, pixel by pixel, the most telling layer, its light brought to the first one's. */
function fuse(layers: readonly Layer[], shrink: number): Uint8Array {
  const { width, height } = layers[0].sheet;
  const out = layers[0].sheet.rgb.slice();
  const best = new Float32Array(width * height);
  const root = new Float32Array(3);
  const colour = new Uint8Array(3);
  for (const { sheet, paper, affine } of layers) {
    const [a, b, c, d, e, f] = affine;
    const home = layers[0].paper;
    for (let j = 0, k = 0; j < height; j++) {
      for (let i = 0; i < width; i++, k++) {
        if (!sample(sheet, i + a + b * i + c * j, j + d + e * i + f * j, colour)) continue;
        rootOf(colour, 0, root);
        const n = cellAt(paper, i, j, shrink);
        const x = root[0] / paper.fx[n];
        const y = root[1] / paper.fy[n];
        const z = root[2] / paper.fz[n];
        const burnt = root[1] > burntRoot;
        const score = burnt ? 0.01 : 0.02 + unlikePaper(116 * (y - 1), 500 * (x - y), 200 * (y - z));
        if (score <= best[k]) continue;
        best[k] = score;
        const gain = home.fy[n] / Math.max(0.05, paper.fy[n]);
        for (let p = 0; p < 3; p++) out[3 * k + p] = Math.min(255, colour[p] * gain + 0.5);
      }
    }
  }
  return out;
}

const cellAt = ({ columns, rows, cell }: PaperField, i: number, j: number, shrink: number): number =>
  Math.min(rows - 1, Math.floor(j / (cell * shrink))) * columns +
  Math.min(columns - 1, Math.floor(i / (cell * shrink)));

/** Bilinear colour at (x, y), in pixels with whole numbers at their centres; false off the sheet. */
function sample({ width, height, rgb }: SquaredSheet, x: number, y: number, into: Uint8Array): boolean {
  const i = Math.floor(x);
  const j = Math.floor(y);
  if (i < 0 || j < 0 || i + 1 >= width || j + 1 >= height) return false;
  const u = x - i;
  const v = y - j;
  const p = 3 * (j * width + i);
  for (let c = 0; c < 3; c++) {
    const top = rgb[p + c] * (1 - u) + rgb[p + 3 + c] * u;
    const low = rgb[p + 3 * width + c] * (1 - u) + rgb[p + 3 * width + 3 + c] * u;
    into[c] = top * (1 - v) + low * v + 0.5;
  }
  return true;
}
