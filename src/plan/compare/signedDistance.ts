import type { Bitmap } from './bitmap.ts';

/**
 * Distance of every pixel centre to the conductor's edge, both sides in one run: first along the columns, then the
 * nearest of the neighbouring columns.
 * @param farthestPx all that lies farther gets this distance; the cost grows with it
 * @returns px, row-major; negative inside the conductor, half a pixel on the pixels at the edge; exact
 * @source two-pass Euclidean transform: Saito and Toriwaki, "New algorithms for Euclidean distance transformation",
 *   Pattern Recognition 27 (1994)
 */
export function signedDistance({ width, height, on }: Bitmap, farthestPx: number): Float32Array {
  const reach = Math.ceil(farthestPx + 0.5);
  const squared = columnSquares(on, width, height, reach);
  const out = new Float32Array(width * height);
  const far = reach * reach;
  for (let y = 0; y < height; y++) {
    const first = y * width;
    const last = first + width - 1;
    // Where neither a change of side nor a column with an edge in reach lies near, nothing need be looked for.
    let ahead = first;
    let behind = first - reach;
    for (let i = first; i <= last; i++) {
      const mine = on[i];
      if (squared[i] < far || (i > first && mine !== on[i - 1])) behind = i;
      if (ahead < i) ahead = i;
      while (ahead < last && ahead < i + reach && squared[ahead] >= far && on[ahead] === on[ahead + 1])
        ahead++;
      const bare = squared[ahead] >= far && (ahead === last || on[ahead] === on[ahead + 1]);
      if (bare && i - behind >= reach) {
        out[i] = mine ? -farthestPx : farthestPx;
        continue;
      }
      let low = squared[i];
      for (let d = 1; d * d < low; d++) {
        const across = d * d;
        if (i - d >= first) {
          const way = on[i - d] === mine ? squared[i - d] + across : across;
          if (way < low) low = way;
        }
        if (i + d <= last) {
          const way = on[i + d] === mine ? squared[i + d] + across : across;
          if (way < low) low = way;
        }
      }
      const distance = Math.min(farthestPx, Math.sqrt(low) - 0.5);
      out[i] = mine ? -distance : distance;
    }
  }
  return out;
}

/** Square of the distance to the other side within each column, at most reach squared. */
function columnSquares(on: Uint8Array, width: number, height: number, reach: number): Uint16Array {
  const steps = new Uint16Array(width * height).fill(reach);
  for (let i = width; i < steps.length; i++) {
    const way = on[i] === on[i - width] ? steps[i - width] + 1 : 1;
    if (way < steps[i]) steps[i] = way;
  }
  for (let i = (height - 1) * width - 1; i >= 0; i--) {
    const way = on[i] === on[i + width] ? steps[i + width] + 1 : 1;
    if (way < steps[i]) steps[i] = way;
  }
  for (let i = 0; i < steps.length; i++) steps[i] *= steps[i];
  return steps;
}
