import type { Colour, Surroundings } from './contrast.ts';
import type { Ribbon } from './ribbon.ts';

/** Most that one sample may say for or against paper. */
const bound = 3;

/**
 * Log-likelihood ratio, paper against copper, of one sample: how far it lies from the paper beside the strip against how
 * far from the strip's own range. A blurred cut is a mixture, so a sample part of the way to paper counts as paper.
 */
export function paperEvidence(ribbon: Ribbon, n: number, around: Surroundings): number {
  const { copper, left, right } = around;
  const byLeft = left ? ratio(ribbon, n, left, copper) : -bound;
  const byRight = right ? ratio(ribbon, n, right, copper) : -bound;
  return Math.max(-bound, Math.min(bound, Math.max(byLeft, byRight)));
}

function ratio({ L, a, b }: Ribbon, n: number, paper: Colour, copper: Colour): number {
  const seen = [L[n], a[n], b[n]];
  let fromPaper = 0;
  let fromCopper = 0;
  let scale = 0;
  for (let c = 0; c < 3; c++) {
    fromPaper += ((seen[c] - paper.mean[c]) / paper.spread[c]) ** 2;
    fromCopper += ((seen[c] - copper.mean[c]) / copper.spread[c]) ** 2;
    scale += Math.log(copper.spread[c] / paper.spread[c]);
  }
  return (fromCopper - fromPaper) / 2 + scale;
}
