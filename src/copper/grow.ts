import { squaredDistance } from './distance.ts';

/** From this reach on, px, the distance of every pixel is found sooner than its rows are looked through. */
const far = 8;

/** The mask and all that lies within `reach` px of it. */
export function grow(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const most = reach * reach;
  if (reach < far) return growNear(mask, width, height, most);
  const distance = squaredDistance(mask, width, height);
  const out = new Uint8Array(mask.length);
  for (let k = 0; k < out.length; k++) out[k] = distance[k] <= most ? 1 : 0;
  return out;
}

/** The same, run by run: a run reaches so far along each row near it. @param most greatest squared distance, px^2 */
function growNear(mask: Uint8Array, width: number, height: number, most: number): Uint8Array {
  const out = new Uint8Array(mask.length);
  const up = Math.floor(Math.sqrt(most));
  const aside = Array.from({ length: up + 1 }, (_, d) => Math.floor(Math.sqrt(most - d * d)));
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      if (!mask[j * width + i]) continue;
      const from = i;
      while (i < width && mask[j * width + i]) i++;
      for (let d = -up; d <= up; d++) {
        if (j + d < 0 || j + d >= height) continue;
        const reach = aside[Math.abs(d)];
        const row = (j + d) * width;
        out.fill(1, row + Math.max(0, from - reach), row + Math.min(width, i + reach));
      }
    }
  }
  return out;
}
