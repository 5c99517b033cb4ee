import type { Curve } from './curve.ts';

/**
 * Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. The lines of reversed-lamp,
 * gap/facing and bridge/unsure are an earlier fit's, of these too few were told since; so are those of missing-strip and
 * lamp-off-strip, which the path-traced photographs have no true case of.
 */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.677, slope: 1.318 },
  seam: { shift: -0.052, slope: 0.997 },
  gap: { shift: -1.349, slope: 1.142 },
  'gap/unsure': { shift: -1.999, slope: 1.077 },
  'gap/fine': { shift: -0.278, slope: 1.088 },
  'gap/seen': { shift: -1.178, slope: 1.323 },
  'gap/plan': { shift: -1.63, slope: 0.928 },
  'gap/facing': { shift: -1.046, slope: 0.76 },
  'gap/wide': { shift: -1.721, slope: 0.895 },
  'gap/cut': { shift: -1.788, slope: 1.003 },
  'missing-strip': { shift: -0.404, slope: 0.81 },
  tight: { shift: -0.844, slope: 0.452 },
  bridge: { shift: -0.668, slope: 1.128 },
  'bridge/faint': { shift: -0.863, slope: 1.154 },
  'bridge/unsure': { shift: -0.094, slope: 1.006 },
  'narrow-neck': { shift: -2.02, slope: 0.838 },
  'reversed-lamp': { shift: -0.941, slope: 0.85 },
  'lamp-off-strip': { shift: -0.702, slope: 0.617 },
  'extra-strip': { shift: -0.892, slope: 0.876 },
};
