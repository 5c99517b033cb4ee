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
    Number(maps.net !== undefined),
    Number(maps.cut !== undefined),
    ...features,
  ];
}

/**
 * Fitted by tests/sheet/fit/fitOutline.ts to the proposals in 360 made-up scenes and 18 path-traced photographs; order as
 * in `certaintyFeatures`.
 */
const weights = [
  0.493, 2.239, 0.455, -1.282, -1.061, 0.803, -0.889, -8.892, 0.882, 1.955, -0.468, -5.07, -3.122, -2.188,
  -1.827, 0.669, 1.7, 1.156, -1.97, 2.212, 0.538, 0.707, -0.819, -3.273, -0.089, -1.046, -1.995, -0.037, 1.98,
  -0.024, 1.974, -0.954, -0.555, -0.049, 0.375, -0.011, 2.062, -1.47, 5.069, 0.872, 1.453, -2.268, -1.185,
  -4.391, 2.345, 2.641,
];
const offset = -2.657;

/**
 * The chance that every corner is within 1 mm, on the careful side: in the fit a wrong outline weighs five times a
 * right one, since one that is believed misplaces everything after it.
 */
export function certaintyOf(features: number[]): number {
  const logit = features.reduce((sum, v, i) => sum + v * weights[i], offset);
  return 1 / (1 + Math.exp(-logit));
}
