import { mostBow } from '../bow.ts';
import type { Chosen, Maps } from './choose.ts';
import type { FittedSides } from './fitSides.ts';

/** What the certainty is judged by, each about 0..1. */
export function certaintyFeatures(
  { score, features }: Chosen,
  lead: number,
  fitted: FittedSides,
  misfit: number,
  residualMm: number,
  outside: number,
  borders: readonly number[],
  maps: Maps,
): number[] {
  const seen = [...fitted.seen].sort((a, b) => a - b);
  const steps = fitted.steps.map((s) => Math.min(1, s / 40)).sort((a, b) => a - b);
  return [
    score / 20,
    Math.min(2, Math.max(-1, lead / 5)),
    seen[0],
    seen[1],
    (seen[0] + seen[1] + seen[2] + seen[3]) / 4,
    steps[0],
    steps[1],
    Math.min(1, 20 * misfit),
    Math.min(1, residualMm),
    ...fitted.ends,
    fitted.bow ? mostBow(fitted.bow) / 4 : 0,
    outside,
    ...borders,
    Math.abs(fitted.k1) / 0.06,
    Number(maps.net !== undefined),
    Number(maps.cut !== undefined),
    ...features,
  ];
}

/**
 * Fitted as tests/sheet/fit/fitOutline.ts does to the proposals in 278 made-up scenes, most of them gathered twice, with two
 * ways to choose the lines, and in 18 path-traced photographs; order as in `certaintyFeatures`.
 */
const weights = [
  0.054, 2.354, 1.905, -0.435, -0.056, 2.637, -3.062, -9.838, 0.694, 0.791, 0.088, -1.929, -3.177, -0.327,
  -0.018, 3.351, 2.53, -0.189, -0.992, 0.293, -2.148, -1.228, -2.276, 0.53, 0.29, -0.078, 1.042, 0.502,
  -0.092, -0.943, -3.036, -0.95, -1.108, -0.988, -0.329, 2.247, 0.503, 1.026, 0.094, 0.368, -1.014, 0.177,
  0.493, 3.054, -1.806, 5.456, -1.038, 0.26, -1.508, -0.381, -7.239, 0.652, 1.615,
];
const offset = -1.604;
/** What corners that hidden ends of sides leave loose cost, in log-odds, beyond what usual sheets have. Set by hand: few are so. */
const looseCost = 3;
const usuallyLoose = 0.15;

/**
 * The chance that every corner is within 1 mm, on the careful side: in the fit a wrong outline weighs nine times a
 * right one, since one that is believed misplaces everything after it.
 * @param loose as `looseEnds` tells it
 */
export function certaintyOf(features: number[], loose = 0): number {
  const logit =
    features.reduce((sum, v, i) => sum + v * weights[i], offset) -
    looseCost * Math.max(0, loose - usuallyLoose);
  return 1 / (1 + Math.exp(-logit));
}
