import type { Curve } from './curve.ts';

/** Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.042, slope: 0.985 },
  seam: { shift: -0.22, slope: 0.985 },
  tight: { shift: -0.769, slope: 1.207 },
  'extra-strip': { shift: -1.238, slope: 0.719 },
  gap: { shift: -0.668, slope: 1.02 },
  'gap/unsure': { shift: -1.089, slope: 1.12 },
  'gap/fine': { shift: 0.545, slope: 0.992 },
  'gap/cut': { shift: -0.706, slope: 0.968 },
  'gap/seen': { shift: -0.523, slope: 1.15 },
  'gap/plan': { shift: -0.977, slope: 0.94 },
  'gap/wide': { shift: -0.318, slope: 0.85 },
  'gap/starved': { shift: -0.73, slope: 1.005 },
  bridge: { shift: -0.12, slope: 0.999 },
  'bridge/unsure': { shift: -0.445, slope: 1.029 },
  'narrow-neck': { shift: -0.959, slope: 0.916 },
  'missing-strip': { shift: -0.118, slope: 0.945 },
  'reversed-lamp': { shift: -0.612, slope: 0.871 },
  'lamp-off-strip': { shift: 0.053, slope: 1.011 },
};
