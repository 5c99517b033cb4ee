/**
 * Weights of the features of a candidate (`Chosen.features`), in order: a conditional logit over the candidates of one
 * picture, fitted by tests/sheet/fit/fitOutline.ts to 360 made-up scenes and 18 path-traced photographs. It is a ranking, not a
 * probability; `certainty.ts` gives that.
 */
const weights = [
  -0.461, 2.499, 1.681, 1.275, 3.953, 3.172, 6.362, 1.618, -1.373, 3.615, 2.671, -0.028, 3.413, 2.403, 1.309,
  5.901, 3.83, 2.5, 3.247, 2.293, 2.522, 0.646, 2.311, -12.825, 1.013, 2.706, -1.538, -2.198, -4.975, 3.866,
  0.109,
];

/** How much a candidate looks like the base: higher is likelier; e-fold odds a unit within one picture. */
export function rankScore(features: number[]): number {
  return features.reduce((sum, v, i) => sum + v * weights[i], 0);
}
