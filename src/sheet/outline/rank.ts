/**
 * Weights of the features of a candidate (`Chosen.features`), in order: a conditional logit over the candidates of one
 * picture, fitted to 360 made-up scenes by tests/sheet/fit/fitOutline.ts. It is a ranking, not a probability;
 * `certainty.ts` gives that.
 */
const weights = [
  -0.37, 3.027, 1.766, 0.741, 4.068, 3.034, 6, 1.379, -1.163, 3.238, 2.172, -0.123, 2.615, 3.073, 1.881,
  6.044, 2.77, 1.887, 2.616, 2.984, 1.814, 0.19, 1.007, -13.081, 0.731, 2.621, -1.927, -3.328, -5.104, 0.496,
  -0.372,
];

/** How much a candidate looks like the base: higher is likelier; e-fold odds a unit within one picture. */
export function rankScore(features: number[]): number {
  return features.reduce((sum, v, i) => sum + v * weights[i], 0);
}
