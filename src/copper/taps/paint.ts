import type { CopperMask } from '../types.ts';

/** Likelihoods given to what a tap has settled. */
const likely = 230;
const unlikely = 25;

/** A copy of a mask in which some pixels are copper, or are none. */
export function painted(mask: CopperMask, pixels: Iterable<number>, copper: 0 | 1): CopperMask {
  const next = {
    ...mask,
    filled: mask.filled.slice(),
    strict: mask.strict.slice(),
    likelihood: mask.likelihood.slice(),
  };
  for (const k of pixels) {
    next.filled[k] = next.strict[k] = copper;
    next.likelihood[k] = copper
      ? Math.max(likely, mask.likelihood[k])
      : Math.min(unlikely, mask.likelihood[k]);
  }
  return next;
}
