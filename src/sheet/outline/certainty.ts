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
 * As tests/sheet/fit/fitOutline.ts prints them for the proposals in 360 made-up scenes and in 18 path-traced photographs; order as
 * in `certaintyFeatures`, the offset last there.
 */
const weights = [
  0.019, 2.192, 1.778, -0.301, 0.229, 1.154, -2.385, -9.542, -0.329, 1.434, 0.728, -3.204, -2.227, -0.389,
  -0.042, 3.056, 1.792, 0.384, -0.769, 0.013, -2.259, -1.007, -1.196, 0.731, 0.397, -0.6, -0.408, -0.016,
  0.968, -0.325, -1.794, -1.088, -0.313, -1.825, -0.286, 1.728, 0.305, 0.265, 2.035, 0.144, -0.591, -0.845,
  -0.497, 2.147, -0.474, 6.071, -0.53, 1.217, -0.704, -1.61, -8.272, 0.925, 0.839,
];
const offset = -1.711;

/**
 * The chance that every corner is within 1 mm, on the careful side: in the fit a wrong outline weighs nine times a
 * right one, since one that is believed misplaces everything after it.
 */
export function certaintyOf(features: number[]): number {
  const logit = features.reduce((sum, v, i) => sum + v * weights[i], offset);
  return 1 / (1 + Math.exp(-logit));
}
