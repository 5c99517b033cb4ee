import { components, membersOf } from './components.ts';
import type { CopperMask } from './types.ts';

/** What lies no farther than this from the base's edge all over is what the base lies on, mm: no tape is so narrow. */
const rimMm = 1.6;

/**
 * The mask without what is seen past the base's edge where it is not quite straight, or where its corners are a little off: a
 * table's brown or a mat's lines look like a narrow strip there. Tape that reaches farther in or out stays.
 */
export function dropRim(mask: CopperMask): CopperMask {
  const { width, height } = mask;
  const off = pastEdge(mask);
  const rims = membersOf(components(mask.filled, width, height, 8)).filter(
    (pixels) => pixels.length > 0 && pixels.every((k) => off(k) <= rimMm),
  );
  if (rims.length === 0) return mask;
  const without = { ...mask, filled: mask.filled.slice(), strict: mask.strict.slice() };
  for (const k of rims.flatMap((pixels) => [...pixels])) without.filled[k] = without.strict[k] = 0;
  return without;
}

/** How far a pixel is from the base's edge, inside or out, mm. */
export function pastEdge({ width, pxPerMm, originMm, baseMm }: CopperMask): (k: number) => number {
  return (k) => {
    const x = originMm[0] + ((k % width) + 0.5) / pxPerMm;
    const y = originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm;
    const inside = Math.min(x, y, baseMm.width - x, baseMm.height - y);
    return Math.abs(inside);
  };
}
