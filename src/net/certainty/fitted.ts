import type { Curve } from './curve.ts';

/**
 * Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. The lines of reversed-lamp
 * and gap/facing are an earlier fit's, of these too few were told since; so are those of missing-strip and lamp-off-strip, which the
 * path-traced photographs have no true case of.
 */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.308, slope: 1.276 },
  seam: { shift: -0.052, slope: 0.997 },
  gap: { shift: -1.064, slope: 1.136 },
  'gap/unsure': { shift: -1.665, slope: 1.071 },
  'gap/fine': { shift: -0.195, slope: 1.079 },
  'gap/seen': { shift: -0.905, slope: 1.24 },
  'gap/plan': { shift: -1.294, slope: 1.126 },
  'gap/facing': { shift: -1.046, slope: 0.76 },
  'gap/wide': { shift: -1.345, slope: 0.917 },
  'gap/cut': { shift: -1.487, slope: 0.935 },
  'missing-strip': { shift: -0.404, slope: 0.81 },
  tight: { shift: -0.782, slope: 0.44 },
  bridge: { shift: -0.078, slope: 1.065 },
  'bridge/unsure': { shift: -0.094, slope: 1.006 },
  'narrow-neck': { shift: -1.607, slope: 0.842 },
  'reversed-lamp': { shift: -0.941, slope: 0.85 },
  'lamp-off-strip': { shift: -0.702, slope: 0.617 },
  'extra-strip': { shift: -0.389, slope: 0.972 },
};
