import { runsOf, runSizes } from './runs.ts';

/** Drops regions under `least` pixels. */
export function dropSpecks(mask: Uint8Array, width: number, height: number, least: number): Uint8Array {
  const runs = runsOf(mask, width, height, 4);
  const sizes = runSizes(runs);
  const out = new Uint8Array(mask.length);
  for (let n = 0; n < runs.count; n++)
    if (sizes[runs.region[n]] >= least) out.fill(1, runs.from[n], runs.to[n]);
  return out;
}

/** Fills holes of paper under `most` pixels. */
export function fillHoles(mask: Uint8Array, width: number, height: number, most: number): Uint8Array {
  const ground = new Uint8Array(mask.length);
  for (let k = 0; k < mask.length; k++) ground[k] = mask[k] ? 0 : 1;
  const runs = runsOf(ground, width, height, 8);
  const sizes = runSizes(runs);
  const out = mask.slice();
  for (let n = 0; n < runs.count; n++)
    if (sizes[runs.region[n]] < most) out.fill(1, runs.from[n], runs.to[n]);
  return out;
}
