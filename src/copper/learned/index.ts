import { giveBack } from '../../engine/giveBack.ts';
import { openNet } from '../../engine/onnx.ts';
import { planesOf } from '../../engine/planes.ts';
import type { RgbPicture } from '../../engine/planes.ts';
import { scaleTo } from '../../engine/scale.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { meanOdds } from './meanOdds.ts';
import { double, halve } from './halve.ts';
import { openThinGaps } from './thinGaps.ts';
import { tiles } from './tiles.ts';
import type { Tile } from './tiles.ts';

/** What the trained net says of each pixel of a sheet: chances 0..255, row-major, width*height of the sheet. */
export interface LearnedCopper {
  copper: Uint8Array;
  lamp: Uint8Array;
  cell: Uint8Array;
}

/** The scale at which the net was trained. */
const netPxPerMm = 10;
const names = ['copper', 'lamp', 'cell'] as const;

/**
 * Visible copper, lamp bodies and cells as a small trained net sees them (made by tests/training/).
 * Any sheet size: large ones are read in overlapping windows, other scales are brought to 10 px/mm and back.
 * @throws FoilproofError when the net cannot be loaded
 */
export async function seeCopperLearned(sheet: SquaredSheet): Promise<LearnedCopper> {
  if (Math.abs(sheet.pxPerMm / netPxPerMm - 1) < 0.02) return readThrice(sheet);
  const ratio = netPxPerMm / sheet.pxPerMm;
  const size = { width: Math.round(sheet.width * ratio), height: Math.round(sheet.height * ratio) };
  const seen = await readThrice({ ...size, rgb: scaleTo(sheet.rgb, 3, sheet, size) });
  for (const name of names) seen[name] = scaleTo(seen[name], 1, size, sheet);
  return seen;
}

/** The say of each reading in what comes out. */
const shares = { near: 0.4, far: 0.3, other: 0.3 };
/**
 * The least chance of copper that the far look and the other net may give: narrow strips are lost to the one, foil in a look
 * that it never learned to the other, so both speak for copper more than against it.
 */
const least = 30;

/**
 * Three readings: the sheet by one net at full scale and halved, where it is seen twice as far, and at full scale by another
 * net that learned from other scenes. What they err in differs. Those at full scale keep thin gaps open.
 */
async function readThrice(picture: RgbPicture): Promise<LearnedCopper> {
  const { width, height } = picture;
  const half = halve(picture);
  const far = await read('sheet.onnx', half);
  const near = await read('sheet.onnx', picture);
  const other = await read('sheet2.onnx', picture);
  const fine = meanOdds([
    { chances: near.copper, share: shares.near },
    { chances: other.copper, share: shares.other },
  ]);
  for (const name of names) {
    const floor = name === 'copper' ? least : 0;
    near[name] = meanOdds([
      { chances: near[name], share: shares.near },
      { chances: double(far[name], half, picture), share: shares.far, least: floor },
      { chances: other[name], share: shares.other, least: floor },
    ]);
  }
  openThinGaps(near.copper, fine, width, height, netPxPerMm);
  return near;
}

async function read(weights: string, picture: RgbPicture): Promise<LearnedCopper> {
  const net = await openNet(weights);
  const area = picture.width * picture.height;
  const seen = { copper: new Uint8Array(area), lamp: new Uint8Array(area), cell: new Uint8Array(area) };
  for (const tile of tiles(picture.width, picture.height)) {
    const planes = planesOf(picture, tile);
    const logits = await net.run(planes, tile.height, tile.width);
    names.forEach((name, c) => keep(seen[name], picture.width, logits, c, tile));
    giveBack(planes, logits);
  }
  return seen;
}

/** Copies the kept part of one map out of a window, logits turned to chances. */
function keep(into: Uint8Array, width: number, logits: Float32Array, channel: number, tile: Tile): void {
  const { x0, y0, x1, y1 } = tile.keep;
  for (let y = y0; y < y1; y++) {
    let from = (channel * tile.height + y - tile.y) * tile.width + x0 - tile.x;
    for (let k = y * width + x0; k < y * width + x1; k++, from++) {
      const logit = logits[from];
      into[k] = logit > -most ? (logit < most ? chances[((logit + most) * steps) | 0] : 255) : 0;
    }
  }
}

/** Beyond this logit a chance rounds to 0 or 255. Between, a table's step is an eighth of one chance in 255 at most. */
const most = 6.24;
const steps = 512;
const chances = Uint8Array.from(
  { length: Math.ceil(2 * most * steps) },
  (_, n) => 255 / (1 + Math.exp(most - (n + 0.5) / steps)) + 0.5,
);
