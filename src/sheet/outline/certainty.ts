import type { Chosen, Maps } from './choose.ts';
import type { FittedSides } from './fitSides.ts';

/** What the certainty is judged by, each about 0..1. */
export function certaintyFeatures(
  { score, features }: Chosen,
  lead: number,
  fitted: FittedSides,
  misfit: number,
  residualMm: number,
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
    Number(maps.net !== undefined),
    Number(maps.cut !== undefined),
    ...features,
  ];
}

/** Fitted to the proposals of 360 made-up scenes by tests/sheet/fit/fitOutline.ts; order as in `certaintyFeatures`. */
const weights = [
  0.305, 2.749, 2.824, 0.152, 0.53, 0.037, -1.413, -5.812, -0.917, -1.91, -0.726, -0.366, 0.412, 0.46, -0.891,
  -0.337, -0.276, 0.179, 0.532, -1.864, -0.168, -0.338, -0.79, -0.701, 1.967, 0.315, 0.197, 0.566, 0.304,
  -0.2, -0.331, 0.097, 2.044, -1.354, 1.413, -1.137, -0.278, -1.457, -0.934, -2.479, 2.984, 1.382,
];
const offset = -2.925;

/**
 * The chance that every corner is within 1 mm, on the careful side: in the fit a wrong outline weighs six times a
 * right one, since one that is believed misplaces everything after it.
 */
export function certaintyOf(features: number[]): number {
  const logit = features.reduce((sum, v, i) => sum + v * weights[i], offset);
  return 1 / (1 + Math.exp(-logit));
}
