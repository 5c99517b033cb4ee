import { components, sizesOf } from './components.ts';

/** Drops regions under `least` pixels. */
export function dropSpecks(mask: Uint8Array, width: number, height: number, least: number): Uint8Array {
  const found = components(mask, width, height, 4);
  const sizes = sizesOf(found);
  return mask.map((_, k) => (found.labels[k] && sizes[found.labels[k]] >= least ? 1 : 0));
}

/** Fills holes of paper under `most` pixels. */
export function fillHoles(mask: Uint8Array, width: number, height: number, most: number): Uint8Array {
  const ground = components(
    mask.map((m) => 1 - m),
    width,
    height,
    8,
  );
  const sizes = sizesOf(ground);
  return mask.map((m, k) => (m || sizes[ground.labels[k]] < most ? 1 : 0));
}
