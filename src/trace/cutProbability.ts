import type { Colour, Surroundings } from './contrast.ts';
import type { CutShape } from './cutShape.ts';

/** Columns, px, of copper side by side from which on the strip is likelier held by a neck than cut. */
const mostHeld = 4;

/**
 * Probability that a way of paper across a strip is a cut. The figures are set on generated creased strips (sound ones,
 * and cuts of 0.3 to 1.5 mm, white paper and kraft) and on path-traced photographs.
 * @param evidence mean evidence along the way
 * @param fine width over the smallest that the picture can show
 */
export function cutProbability(
  evidence: number,
  { crooked, uneven, sure, held }: CutShape,
  fine: number,
  around: Surroundings,
): number {
  const seen = Math.min(1, sure / 0.85) ** 2 / (1 + Math.exp(-2.2 * (evidence - 0.9)));
  const whole = 1 / (1 + (held / mostHeld) ** 4);
  const shape = whole / (1 + (crooked / 1.2) ** 4) / (1 + (uneven / 0.6) ** 4);
  const tellable = 0.35 + 0.65 * Math.min(1, fine) ** 3;
  return seen * shape * tellable * contrast(around);
}

/** Little can be said where paper and copper look alike: both burnt out, or both in deep shade. */
function contrast({ copper, left, right }: Surroundings): number {
  const paper = left ?? right;
  if (!paper) return 0.3;
  const darkest = paper.mean[0] < 26 ? 0.5 : 1;
  const blotchy = 1 / (1 + (paper.spread[0] / 15) ** 4);
  return darkest * blotchy * Math.min(1, 0.4 + difference(paper, copper) / 12);
}

/** Euclidean distance in L*a*b*, with the copper's own spread of lightness counted, as a mirror's facets differ from paper by turns. */
function difference(paper: Colour, copper: Colour): number {
  const [dL, da, db] = paper.mean.map((v, c) => v - copper.mean[c]);
  return Math.hypot(dL, da, db) + copper.spread[0] / 2 - 3;
}
