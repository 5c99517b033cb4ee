import type { Curve } from './curve.ts';

/**
 * Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. The lines of gap/plan and
 * narrow-neck are from a later fit than the others, which that fit did not better.
 */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.643, slope: 0.774 },
  seam: { shift: -0.205, slope: 0.986 },
  gap: { shift: -0.825, slope: 0.869 },
  'gap/unsure': { shift: -0.67, slope: 1.096 },
  'gap/fine': { shift: -0.195, slope: 1.027 },
  'gap/wide': { shift: -0.75, slope: 0.902 },
  'gap/cut': { shift: -0.858, slope: 0.858 },
  'gap/seen': { shift: -0.6, slope: 1.084 },
  'gap/plan': { shift: -1.8, slope: 0.766 },
  'gap/facing': { shift: -1.046, slope: 0.76 },
  'extra-strip': { shift: -0.803, slope: 0.858 },
  bridge: { shift: -0.958, slope: 0.778 },
  'narrow-neck': { shift: -1.751, slope: 0.923 },
  tight: { shift: -1.12, slope: 0.938 },
  'missing-strip': { shift: -0.404, slope: 0.81 },
  'reversed-lamp': { shift: -0.941, slope: 0.85 },
};
