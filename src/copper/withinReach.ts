import type { CopperMask } from './types.ts';

/** The pixels given and all within so many px of one, along either axis; row-major. */
export function withinReach(
  places: Iterable<number>,
  reach: number,
  { width, height }: Pick<CopperMask, 'width' | 'height'>,
): Set<number> {
  const all = new Set<number>();
  for (const k of places) {
    const [i, j] = [k % width, Math.floor(k / width)];
    for (let y = Math.max(0, j - reach); y <= Math.min(height - 1, j + reach); y++)
      for (let x = Math.max(0, i - reach); x <= Math.min(width - 1, i + reach); x++) all.add(y * width + x);
  }
  return all;
}
