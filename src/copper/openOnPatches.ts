import { insideRing, type Ring } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { isShaded, medianRgb, rgbAt } from './paperColour.ts';
import type { CopperMask } from './types.ts';
import { withinReach } from './withinReach.ts';

/** Copper as likely as this stays whatever its colour; what is less likely than the other may be the patch's own paper. */
const sure = 230;
const hardly = 100;
/** Enough of the patch's paper for a median, mm^2. */
const leastPaper = 4;
/** Where this share of the sure copper on a patch would pass for its paper, colour tells nothing. */
const mostAlike = 0.15;
/** Blur and a patch laid a little aside leave a rim so wide, mm. */
const rimMm = 0.3;

/**
 * Opens what passes for copper on a patch and has the colour of the patch's own paper: a white scrap on kraft, as wide as tape
 * and laid across it, looks like a burnt-out strip to the nets.
 * @param patches outlines, mm on the base
 */
export function openOnPatches(mask: CopperMask, sheet: SquaredSheet, patches: readonly Ring[]): CopperMask {
  if (mask.by !== 'learned' || patches.length === 0) return mask;
  const [filled, strict] = [mask.filled.slice(), mask.strict.slice()];
  for (const patch of patches) for (const k of ownPaper(patch, mask, sheet)) filled[k] = strict[k] = 0;
  return { ...mask, filled, strict };
}

function ownPaper(patch: Ring, mask: CopperMask, sheet: SquaredSheet): number[] {
  const { filled, likelihood, pxPerMm } = mask;
  const on = placesOn(patch, mask);
  const paper = on.filter((k) => !filled[k] && likelihood[k] < hardly);
  if (paper.length < leastPaper * pxPerMm ** 2) return [];
  const colour = medianRgb(sheet, paper);
  const alike = (k: number) => isShaded(rgbAt(sheet, k), colour);
  const copper = on.filter((k) => filled[k] && likelihood[k] >= sure);
  if (copper.filter(alike).length > mostAlike * copper.length) return [];
  const own = on.filter((k) => filled[k] && likelihood[k] < sure && alike(k));
  const rim = withinReach(own, Math.round(rimMm * pxPerMm), mask);
  return [...rim].filter((k) => filled[k] && likelihood[k] < sure);
}

/** The mask's pixels within an outline. */
function placesOn(ring: Ring, { width, height, pxPerMm, originMm: [x0, y0] }: CopperMask): number[] {
  const xs = ring.map(([x]) => (x - x0) * pxPerMm);
  const ys = ring.map(([, y]) => (y - y0) * pxPerMm);
  const places: number[] = [];
  for (let j = Math.max(0, Math.floor(Math.min(...ys))); j < Math.min(height, Math.max(...ys)); j++) {
    for (let i = Math.max(0, Math.floor(Math.min(...xs))); i < Math.min(width, Math.max(...xs)); i++) {
      if (insideRing([x0 + (i + 0.5) / pxPerMm, y0 + (j + 0.5) / pxPerMm], ring)) places.push(j * width + i);
    }
  }
  return places;
}
