import type { RelativeLab } from './relative.ts';

/** How sure each pixel is copper by its own colour against the local paper, 0..255; 128 is even odds. */
export function copperLikelihood({ L, a, b }: RelativeLab): Uint8Array {
  const out = new Uint8Array(L.length);
  for (let k = 0; k < out.length; k++) {
    const warm = Math.min(a[k] / 5, b[k] / 3);
    const chroma = Math.hypot(a[k], b[k]);
    const hue = warm > 0 ? Math.min(chroma / 11, warm) : 0;
    const dark = (100 - L[k]) / 38;
    const odds = Math.max(hue, dark);
    out[k] = Math.max(0, Math.min(255, 128 * odds));
  }
  return out;
}
