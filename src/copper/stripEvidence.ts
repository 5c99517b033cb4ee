import { boxMean } from './boxMean.ts';
import type { RelativeLab } from './relative.ts';
import { addStripScore } from './strips.ts';
import type { Taught } from './taught.ts';

/**
 * Where strip-shaped things lie, 0..1. Copper mirrors whatever is round it, so no one colour tells it: the picture is cut
 * at several levels of several cues (copper's own hue, darker, lighter, unlike paper on the whole), and at each level only the
 * regions shaped like tape count. A strip within a shadow or a wash stands out at some level of some cue.
 * @param relative the sheet against its local paper, at about 2 px/mm
 * @param taught what the maker's taps say
 */
export function stripEvidence(relative: RelativeLab, pxPerMm: number, taught?: Taught): Float32Array {
  const { width, height, L, a, b } = relative;
  const evidence = new Float32Array(L.length);
  const unlike = new Float32Array(L.length);
  const hue = new Float32Array(L.length);
  for (let k = 0; k < L.length; k++) {
    unlike[k] = Math.sqrt(((L[k] - 100) / 8) ** 2 + (a[k] / 4) ** 2 + (b[k] / 5) ** 2);
    hue[k] = Math.min(Math.sqrt(a[k] ** 2 + b[k] ** 2), 2.2 * a[k], 3.6 * b[k]);
  }
  const around = boxMean(unlike, width, height, Math.round(0.5 * pxPerMm));
  const cues = [
    { cue: hue, sign: 1, levels: [6, 11, 18], weight: 1 },
    { cue: L, sign: -1, levels: [-85, -72, -58, -42, -26], weight: 1 },
    { cue: L, sign: 1, levels: [107, 115], weight: 0.8 },
    { cue: around, sign: 1, levels: [1.6, 2.5, 4, 6.5], weight: 0.9 },
  ];
  if (taught?.copper.length) cues.push({ cue: taught.cue, sign: 1, levels: [0, 2, 5], weight: 1 });
  const mask = new Uint8Array(L.length);
  for (const { cue, sign, levels, weight } of cues) {
    for (const level of levels) {
      for (let k = 0; k < mask.length; k++) mask[k] = sign * cue[k] > level ? 1 : 0;
      addStripScore(mask, width, height, pxPerMm, evidence, weight, taught);
    }
  }
  return evidence;
}
