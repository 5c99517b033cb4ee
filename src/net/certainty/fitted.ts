import type { Curve } from './curve.ts';

/**
 * Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. The lines of reversed-lamp
 * and gap/facing are an earlier fit's, of these too few were told since; so are those of missing-strip and lamp-off-strip, which the
 * path-traced photographs have no true case of.
 */
export const fitted: Readonly<Record<string, Curve>> = {
  'shifted-strip': { shift: -0.552, slope: 1.295 },
  seam: { shift: -0.105, slope: 0.993 },
  gap: { shift: -1.242, slope: 1.087 },
  'gap/unsure': { shift: -1.816, slope: 1.057 },
  'gap/fine': { shift: -0.217, slope: 1.083 },
  'gap/seen': { shift: -0.989, slope: 1.272 },
  'gap/plan': { shift: -1.594, slope: 0.876 },
  'gap/facing': { shift: -1.046, slope: 0.76 },
  'gap/wide': { shift: -1.528, slope: 0.905 },
  'gap/cut': { shift: -1.691, slope: 0.877 },
  'missing-strip': { shift: -0.404, slope: 0.81 },
  tight: { shift: -0.636, slope: 0.535 },
  bridge: { shift: -0.776, slope: 1.058 },
  'bridge/faint': { shift: -0.916, slope: 1.077 },
  'bridge/unsure': { shift: -0.094, slope: 1.006 },
  'narrow-neck': { shift: -1.906, slope: 0.827 },
  'reversed-lamp': { shift: -0.941, slope: 0.85 },
  'lamp-off-strip': { shift: -0.702, slope: 0.617 },
  'extra-strip': { shift: -0.808, slope: 0.856 },
};
