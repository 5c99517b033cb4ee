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
  0.092, 2.413, 2.202, -0.556, 0.205, 2.644, -3.161, -9.756, 0.694, 0.561, 0.319, -2.754, -3.186, -1.309,
  0.506, 3.206, 2.343, 0.155, -1.008, -0.712, -2.2, -1.205, -2.432, 0.319, 0.238, -0.102, 0.877, 0.527,
  -0.014, -0.893, -3.167, -0.983, -0.922, -1.025, -0.377, 2.426, 0.588, 1.209, -0.184, 0.224, -1.089, 0.255,
  0.408, 2.953, -1.991, 5.25, -1.467, 0.402, -1.494, -0.259, -7.508, 0.872, 1.426,
];
const offset = -1.401;

/**
 * The chance that every corner is within 1 mm, on the careful side: in the fit a wrong outline weighs nine times a
 * right one, since one that is believed misplaces everything after it.
 */
export function certaintyOf(features: number[]): number {
  const logit = features.reduce((sum, v, i) => sum + v * weights[i], offset);
  return 1 / (1 + Math.exp(-logit));
}
