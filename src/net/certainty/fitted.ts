import type { Curve } from './curve.ts';

/** Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: 0.43, slope: 1.067 },
  seam: { shift: 0.664, slope: 1.02 },
  gap: { shift: 0.346, slope: 1.122 },
  'gap/unsure': { shift: -1.461, slope: 1.044 },
  'gap/fine': { shift: 0.571, slope: 1.003 },
  'gap/cut': { shift: 0.335, slope: 1.162 },
  'gap/facing': { shift: 0.395, slope: 1.158 },
  'gap/plan': { shift: 0.374, slope: 1.155 },
  'narrow-neck': { shift: -0.377, slope: 1.052 },
  'extra-strip': { shift: -0.108, slope: 1.095 },
  'lamp-off-strip': { shift: -0.222, slope: 1.06 },
  bridge: { shift: 0.444, slope: 1.08 },
  'missing-strip': { shift: -0.375, slope: 1.086 },
  tight: { shift: 0.046, slope: 1.145 },
  'reversed-lamp': { shift: 0.087, slope: 1.021 },
};
