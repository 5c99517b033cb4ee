/**
 * Weights of `featureNames`, in order: a conditional logit over the candidates of one picture, fitted to 612 made-up
 * scenes (tests/sheet/scenes). It is a ranking, not a probability; `certainty.ts` gives that.
 */
const weights = [
  -3.21, 0.64, 6.18, 0.52, 2.65, 7.0, 5.7, 2.07, -1.9, 4.92, 0.27, 1.65, 3.01, 1.4, 4.17, 5.61, 2.61, 2.06,
  2.47, 4.47, 4.99, 2.77, -0.97, -14.43, 0.23, 15.91,
];

/** How much a candidate looks like the base: higher is likelier; e-fold odds a unit within one picture. */
export function rankScore(features: number[]): number {
  return features.reduce((sum, v, i) => sum + v * weights[i], 0);
}
