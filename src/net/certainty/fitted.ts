import type { Curve } from './curve.ts';

/**
 * Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. The lines of missing-strip,
 * reversed-lamp and gap/facing are an earlier fit's: of these too few were told since, or only where the outline was wrong.
 */
export const fitted: Readonly<Record<string, Curve>> = {
  'missing-strip': { shift: -0.404, slope: 0.81 },
  'reversed-lamp': { shift: -0.941, slope: 0.85 },
  'shifted-strip': { shift: -0.427, slope: 1.189 },
  seam: { shift: -0.329, slope: 0.978 },
  gap: { shift: -1.631, slope: 1.224 },
  'gap/unsure': { shift: -1.654, slope: 1.091 },
  'gap/cut': { shift: -2.134, slope: 1.081 },
  'gap/fine': { shift: 0.075, slope: 1.036 },
  'gap/seen': { shift: -1.429, slope: 1.38 },
  'gap/plan': { shift: -1.944, slope: 1.107 },
  'gap/wide': { shift: -1.248, slope: 0.942 },
  'gap/facing': { shift: -1.046, slope: 0.76 },
  tight: { shift: -1.264, slope: 0.474 },
  'extra-strip': { shift: -0.847, slope: 1.042 },
  'narrow-neck': { shift: -2.139, slope: 0.844 },
  bridge: { shift: -0.966, slope: 0.941 },
  'bridge/unsure': { shift: -0.235, slope: 1.015 },
  'lamp-off-strip': { shift: -0.702, slope: 0.617 },
};
