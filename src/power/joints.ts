import type { JointKind } from './types.ts';

/** A joint's resistance: as reckoned, and the range that care and luck give, ohm. */
interface JointRange {
  usual: number;
  least: number;
  most: number;
}

/**
 * Foil held on foil 0.02 to 0.2 ohm, merely resting 1 to 10 ohm, a good conductive adhesive about 1 ohm on 5 x 5 mm: from
 * memory, no source; that a resistance remains even in conductive adhesive is confirmed (emcesd.com, Dec 2005).
 */
export const jointRanges: Record<JointKind, JointRange> = {
  seam: { usual: 0.1, least: 0.02, most: 10 },
  contact: { usual: 0.2, least: 0.05, most: 10 },
  'lamp-leg': { usual: 0.05, least: 0.02, most: 10 },
  'cell-face': { usual: 0.05, least: 0.02, most: 2 },
};
