import { giveBack } from '../engine/giveBack.ts';
import { components, sizesOf } from './components.ts';

/** Drops regions under `least` pixels. */
export function dropSpecks(mask: Uint8Array, width: number, height: number, least: number): Uint8Array {
  const found = components(mask, width, height, 4);
  const sizes = sizesOf(found);
  const out = new Uint8Array(mask.length);
  for (let k = 0; k < out.length; k++) if (mask[k] && sizes[found.labels[k]] >= least) out[k] = 1;
  giveBack(found.labels);
  return out;
}

/** Fills holes of paper under `most` pixels. */
export function fillHoles(mask: Uint8Array, width: number, height: number, most: number): Uint8Array {
  const ground = new Uint8Array(mask.length);
  for (let k = 0; k < mask.length; k++) ground[k] = mask[k] ? 0 : 1;
  const found = components(ground, width, height, 8);
  const sizes = sizesOf(found);
  const out = mask.slice();
  for (let k = 0; k < out.length; k++) if (ground[k] && sizes[found.labels[k]] < most) out[k] = 1;
  giveBack(found.labels, ground);
  return out;
}
