import type { Chosen } from './choose.ts';
import type { FittedSides } from './fitSides.ts';

/** What the certainty is judged by, each about 0..1. */
export function certaintyFeatures(
  { score, features }: Chosen,
  lead: number,
  fitted: FittedSides,
  misfit: number,
  residualMm: number,
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
    ...features,
  ];
}

/** Fitted to the proposals of 509 made-up scenes (tests/sheet/scenes); order as in `certaintyFeatures`. */
const weights = [
  3.17, 1.62, 4.57, 0.07, 3.49, 6.02, -6.16, -6.94, 1.01, -4.89, -0.85, 2.5, -1.26, -0.53, 1.81, -1.44, -1.07,
  -2.32, 2.68, 1.56, -8.96, 1.13, 1.41, 1.92, 4.84, 1.76, -2.23, 1.07, 1.38, -3.57, 0.62, -2.96, 1.08, -15.59,
  13.88,
];
const offset = -13.16;

/** What a point against an outline (`Chosen.against`) takes off the log odds. Chosen by hand, not fitted. */
const perPoint = 1.6;

/** The chance that every corner is within 1 mm: logistic, fitted to made-up scenes. */
export function certaintyOf(features: number[], against: number): number {
  const logit = features.reduce((sum, v, i) => sum + v * weights[i], offset) - perPoint * against;
  return 1 / (1 + Math.exp(-logit));
}
