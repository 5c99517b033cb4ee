import { openNet } from '../../engine/onnx.ts';
import { planesOf } from '../../engine/planes.ts';
import { scaleTo } from '../../engine/scale.ts';
import type { Photo } from '../../photo/index.ts';
import { shrinkPhoto } from '../shrink.ts';

/** Where the base lies: chance 0..1 at each place of a coarse grid laid over the whole photograph, row-major. */
export interface BaseMap {
  width: number;
  height: number;
  prob: Float32Array;
}

/** Long side at which the net was trained, px, and the step that both sides must be a multiple of. */
const longSide = 256;
const grain = 16;

/**
 * The chance of each place of a photograph to be base (not flap, not table), as a small trained net sees it.
 * Pixel (i, j) of the map covers picture x in [i, i+1) * photo.width / map.width, y likewise.
 * @throws FoilproofError when the net cannot be loaded
 */
export async function baseMap(photo: Photo): Promise<BaseMap> {
  const net = await openNet('base.onnx');
  const ratio = longSide / Math.max(photo.width, photo.height);
  const size = { width: gridSide(photo.width * ratio), height: gridSide(photo.height * ratio) };
  const rgb = small(photo, size);
  const logits = await net.run(planesOf({ ...size, rgb }, { x: 0, y: 0, ...size }), size.height, size.width);
  return { ...size, prob: logits.map((v) => 1 / (1 + Math.exp(-v))) };
}

const gridSide = (px: number): number => Math.max(grain, Math.round(px / grain) * grain);

/** The whole photograph as RGB of a given small size; halved by area means first. */
function small(photo: Photo, size: { width: number; height: number }): Uint8Array {
  const level = Math.max(0, Math.floor(Math.log2(photo.width / size.width)));
  const halved = shrinkPhoto(photo, level);
  const rgb = new Uint8Array(halved.width * halved.height * 3);
  for (let k = 0, p = 0; k < halved.pixels.length; k++) {
    const pixel = halved.pixels[k];
    rgb[p++] = pixel;
    rgb[p++] = pixel >>> 8;
    rgb[p++] = pixel >>> 16;
  }
  return scaleTo(rgb, 3, halved, size);
}
