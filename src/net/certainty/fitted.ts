import type { Curve } from './curve.ts';

/** Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.572, slope: 0.799 },
  seam: { shift: -0.185, slope: 0.988 },
  tight: { shift: -0.547, slope: 1.166 },
  'extra-strip': { shift: -0.85, slope: 0.815 },
  gap: { shift: -0.476, slope: 0.871 },
  'gap/unsure': { shift: -0.527, slope: 1.064 },
  'gap/fine': { shift: -0.055, slope: 1.005 },
  'gap/cut': { shift: -0.596, slope: 0.739 },
  'gap/seen': { shift: -0.357, slope: 0.999 },
  'gap/plan': { shift: -0.579, slope: 0.774 },
  'gap/wide': { shift: -0.583, slope: 0.725 },
  'gap/starved': { shift: -0.54, slope: 0.855 },
  bridge: { shift: -0.432, slope: 0.836 },
  'narrow-neck': { shift: -0.856, slope: 0.874 },
  'missing-strip': { shift: -0.533, slope: 0.749 },
  'reversed-lamp': { shift: -1.008, slope: 0.789 },
  'lamp-off-strip': { shift: 0.053, slope: 1.011 },
};
