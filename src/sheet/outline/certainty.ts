import type { Chosen } from './choose.ts';
import type { FittedSides } from './fitSides.ts';

/** What the certainty is judged by, each about 0..1. */
export function certaintyFeatures(
  { score }: Chosen,
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
  ];
}

/** Fitted to the proposals of 509 made-up scenes (tests/sheet/scenes); order as in `certaintyFeatures`. */
const weights = [4.3, 2.19, -0.06, -1.46, 6.28, 6.57, -7.98, -5.88, 1.63];
const offset = -14.52;

/** The chance that every corner is within 1 mm: logistic, fitted to made-up scenes. */
export function certaintyOf(features: number[]): number {
  return 1 / (1 + Math.exp(-features.reduce((sum, v, i) => sum + v * weights[i], offset)));
}
