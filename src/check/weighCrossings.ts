import type { CopperMask } from '../copper/index.ts';
import type { Crossing, Traced } from '../trace/index.ts';

/** Likelihood, 0..255, under which the net is no longer sure of copper; on sound tape it stays over. */
const sureCopper = 225;
/** Share of a crossing's middle that must be under it before the net lets the gap stand. */
const agreeShare = 0.3;
/** What is left of a gap's chance where the net saw copper: a plain line stays a place to look at, a faint one is not told. */
const doubted = 0.45;

/**
 * Cuts are told from paper seen across a strip; a bright facet can look the same. Where the trained net sees copper
 * right through such a place, the gap is in doubt: a place to look at, not one that holds the verdict.
 */
export function weighCrossings(traced: Traced, mask: CopperMask): Traced {
  if (mask.by !== 'learned') return traced;
  const crossings = traced.crossings.map((crossing) => {
    if (crossing.other !== undefined || crossing.fine || paperShare(mask, crossing) >= agreeShare)
      return crossing;
    const gap = crossing.gap * doubted;
    return { ...crossing, gap, glare: Math.max(crossing.glare, 1 - gap - crossing.seam) };
  });
  return { ...traced, crossings };
}

/** Share of the pixels in the middle of a crossing where the net is not sure of copper. */
function paperShare(mask: CopperMask, { at, widthMm }: Crossing): number {
  const { width, height, pxPerMm, originMm, likelihood } = mask;
  const radius = Math.max(0.3, 0.4 * widthMm) * pxPerMm;
  const [x, y] = [(at[0] - originMm[0]) * pxPerMm, (at[1] - originMm[1]) * pxPerMm];
  let paper = 0;
  let all = 0;
  for (let j = Math.max(0, Math.ceil(y - radius)); j <= Math.min(height - 1, y + radius); j++) {
    for (let i = Math.max(0, Math.ceil(x - radius)); i <= Math.min(width - 1, x + radius); i++) {
      if ((i - x) ** 2 + (j - y) ** 2 > radius * radius) continue;
      all++;
      if (likelihood[j * width + i] < sureCopper) paper++;
    }
  }
  return all === 0 ? 0 : paper / all;
}
