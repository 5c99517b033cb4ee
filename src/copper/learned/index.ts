import { giveBack } from '../../engine/giveBack.ts';
import { openNet } from '../../engine/onnx.ts';
import { planesOf } from '../../engine/planes.ts';
import type { RgbPicture } from '../../engine/planes.ts';
import { scaleTo } from '../../engine/scale.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { clearHaze } from './clearHaze.ts';
import { double, halve } from './halve.ts';
import { meanOdds } from './meanOdds.ts';
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
  const clear = clearHaze(sheet);
  if (Math.abs(sheet.pxPerMm / netPxPerMm - 1) < 0.02) return look(clear);
  const scaled = scale(clear, netPxPerMm / sheet.pxPerMm);
  const seen = await look(scaled);
  for (const name of names) seen[name] = scaleTo(seen[name], 1, scaled, sheet);
  return seen;
}

/**
 * The readings: the scale at which the sheet is shown to the net, and the say of each in what comes out. Seen smaller, the net
 * looks further round and misses fine things.
 */
const looks = {
  near: { scale: 1, share: 0.45 },
  mid: { scale: 0.7, share: 0.3 },
  far: { scale: 0.5, share: 0.25 },
};

/** The mean of all looks; the one at full scale keeps thin gaps open. */
async function look(picture: RgbPicture): Promise<LearnedCopper> {
  const { width, height } = picture;
  const far = await readAt(looks.far.scale, picture);
  const mid = await readAt(looks.mid.scale, picture);
  const near = await readAt(looks.near.scale, picture);
  const seen = { ...near };
  for (const name of names) {
    seen[name] = meanOdds([
      { chances: near[name], share: looks.near.share },
      { chances: mid[name], share: looks.mid.share },
      { chances: far[name], share: looks.far.share },
    ]);
  }
  openThinGaps(seen.copper, near.copper, width, height, netPxPerMm);
  return seen;
}

/** One reading, brought back to the picture's own size. */
async function readAt(by: number, picture: RgbPicture): Promise<LearnedCopper> {
  if (by === 1) return read(picture);
  const halved = by === 0.5;
  const smaller = halved ? halve(picture) : scale(picture, by);
  const seen = await read(smaller);
  for (const name of names)
    seen[name] = halved ? double(seen[name], smaller, picture) : scaleTo(seen[name], 1, smaller, picture);
  return seen;
}

function scale(picture: RgbPicture, by: number): RgbPicture {
  const width = Math.max(1, Math.round(picture.width * by));
  const height = Math.max(1, Math.round(picture.height * by));
  return { width, height, rgb: scaleTo(picture.rgb, 3, picture, { width, height }) };
}

async function read(picture: RgbPicture): Promise<LearnedCopper> {
  const net = await openNet('sheet.onnx');
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
