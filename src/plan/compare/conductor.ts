import { seeCopper } from '../../copper/index.ts';
import type { Photo } from '../../photo/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { Bitmap } from './bitmap.ts';
import { otsu } from './otsu.ts';

/** What is taken for conductor in a picture. */
export type ConductorSide = 'dark' | 'light' | 'copper';

export interface ReadConductor {
  bitmap: Bitmap;
  side: ConductorSide;
  /** The picture itself decided; a wrong guess would turn opens into shorts, so it is always said. */
  guessed: boolean;
}

/** Share of pixels that must have a colour before a picture counts as a photograph and not as a mask. */
const COLOURED = 0.02;
const COLOUR_SPREAD = 40;
/** A tape circuit keeps clear of the edge: dark almost all along the rim is ground, and the light is the conductor. */
const RIM_DARK = 0.93;

/**
 * The conductor of a mask, a two-valued drawing or a squared colour picture.
 * @param side undefined: a coloured picture is read by the copper stage; a grey one is parted by Otsu's threshold and
 *   its dark side is the conductor, unless nearly the whole rim is dark and most of the picture too
 * @param pxPerMm needed by the copper stage only
 */
export function readConductor(photo: Photo, side?: ConductorSide, pxPerMm = 10): ReadConductor {
  const wanted = side ?? (isColoured(photo) ? 'copper' : undefined);
  if (wanted === 'copper') {
    return { bitmap: copperOf(photo, pxPerMm), side: 'copper', guessed: !side };
  }
  const { width, height } = photo;
  const grey = greyOf(photo);
  const threshold = otsu(grey);
  const dark = grey.map((v) => (v <= threshold ? 1 : 0));
  const by = wanted ?? (rimShare(dark, width, height) > RIM_DARK && share(dark) > 0.5 ? 'light' : 'dark');
  const on = by === 'dark' ? dark : dark.map((v) => 1 - v);
  return { bitmap: { width, height, on }, side: by, guessed: !side };
}

function isColoured({ rgba }: Photo): boolean {
  let coloured = 0;
  for (let i = 0; i < rgba.length; i += 4) {
    const spread = Math.max(rgba[i], rgba[i + 1], rgba[i + 2]) - Math.min(rgba[i], rgba[i + 1], rgba[i + 2]);
    if (spread > COLOUR_SPREAD) coloured++;
  }
  return coloured > (COLOURED * rgba.length) / 4;
}

function copperOf({ width, height, rgba }: Photo, pxPerMm: number): Bitmap {
  const rgb = new Uint8Array(width * height * 3);
  for (let i = 0, k = 0; i < rgba.length; i += 4) {
    rgb[k++] = rgba[i];
    rgb[k++] = rgba[i + 1];
    rgb[k++] = rgba[i + 2];
  }
  const sheet: SquaredSheet = {
    width,
    height,
    pxPerMm,
    originMm: [0, 0],
    baseMm: { width: width / pxPerMm, height: height / pxPerMm },
    rgb,
    toPhoto: [pxPerMm, 0, 0, 0, pxPerMm, 0, 0, 0, 1],
    photoPxPerMm: pxPerMm,
  };
  return { width, height, on: seeCopper(sheet).filled };
}

function greyOf({ width, height, rgba }: Photo): Uint8Array {
  const grey = new Uint8Array(width * height);
  for (let k = 0; k < grey.length; k++) grey[k] = (rgba[4 * k] + rgba[4 * k + 1] + rgba[4 * k + 2]) / 3;
  return grey;
}

function share(on: Uint8Array): number {
  let sum = 0;
  for (const v of on) sum += v;
  return sum / on.length;
}

function rimShare(on: Uint8Array, width: number, height: number): number {
  let sum = 0;
  for (let x = 0; x < width; x++) sum += on[x] + on[(height - 1) * width + x];
  for (let y = 0; y < height; y++) sum += on[y * width] + on[y * width + width - 1];
  return sum / (2 * (width + height));
}
