import type { Point } from '../../geometry/index.ts';
import { boxRound } from '../paperRound.ts';
import { squaredDistance } from '../distance.ts';
import type { CopperMask } from '../types.ts';

/** The piece of a mask that a tap lies on. */
export interface TappedPiece {
  /** Pixels of the sheet. */
  pixels: number[];
  areaMm2: number;
  /** Whether it is as long, straight and even as a strip of tape. */
  isStrip: boolean;
  /** Its greatest breadth, and how far its border is from the tap, mm. */
  broadMm: number;
  insideMm: number;
}

/** A strip is so many times longer than broad, and its border no longer than so many times that of a rectangle. */
const strip = { long: 2.5, rim: 1.2 };

/** The piece nearest to a tap, no farther off than `reachMm`. @param tap mm */
export function pieceAt(mask: CopperMask, tap: Point, reachMm: number): TappedPiece | undefined {
  const { width, height, pxPerMm, originMm, filled } = mask;
  const [x, y] = [(tap[0] - originMm[0]) * pxPerMm, (tap[1] - originMm[1]) * pxPerMm];
  const at = nearestCopper(mask, x, y, reachMm * pxPerMm);
  if (at < 0) return undefined;
  const pixels = regionRound(filled, at, width, height);
  const box = boxRound(Int32Array.from(pixels).sort(), mask, 1 / pxPerMm);
  const [w, h] = [box.i1 - box.i0 + 1, box.j1 - box.j0 + 1];
  const open = new Uint8Array(w * h).fill(1);
  const placeOf = (k: number): number => (Math.floor(k / width) - box.j0) * w + (k % width) - box.i0;
  for (const k of pixels) open[placeOf(k)] = 0;
  const distances = squaredDistance(open, w, h);
  // Nothing is known beyond the sheet: what lies along its border is no broader than it is seen.
  const inside = (k: number): number => {
    const [i, j] = [k % width, Math.floor(k / width)];
    return Math.min(Math.sqrt(distances[placeOf(k)]), i + 1, width - i, j + 1, height - j);
  };
  let most = 0;
  for (const k of pixels) most = Math.max(most, inside(k));
  const rim = pixels.filter((k) => distances[placeOf(k)] <= 1).length;
  const length = pixels.length / (2 * most);
  return {
    pixels,
    areaMm2: pixels.length / pxPerMm ** 2,
    isStrip: length >= strip.long * 2 * most && rim <= strip.rim * 2 * (length + 2 * most),
    broadMm: (2 * most) / pxPerMm,
    insideMm: inside(at) / pxPerMm,
  };
}

function nearestCopper({ width, height, filled }: CopperMask, x: number, y: number, reach: number): number {
  let best = -1;
  let least = Infinity;
  const r = Math.ceil(reach);
  const [ci, cj] = [Math.floor(x), Math.floor(y)];
  for (let j = Math.max(0, cj - r); j <= Math.min(height - 1, cj + r); j++) {
    for (let i = Math.max(0, ci - r); i <= Math.min(width - 1, ci + r); i++) {
      const far = (i - ci) ** 2 + (j - cj) ** 2;
      if (!filled[j * width + i] || far >= least || far > reach * reach) continue;
      least = far;
      best = j * width + i;
    }
  }
  return best;
}

/** The pixels that hang together with one, corners counted. */
export function regionRound(mask: Uint8Array, at: number, width: number, height: number): number[] {
  const seen = new Uint8Array(mask.length);
  const found = [at];
  seen[at] = 1;
  for (let n = 0; n < found.length; n++) {
    const [i, j] = [found[n] % width, Math.floor(found[n] / width)];
    for (let y = Math.max(0, j - 1); y <= Math.min(height - 1, j + 1); y++)
      for (let x = Math.max(0, i - 1); x <= Math.min(width - 1, i + 1); x++) {
        const k = y * width + x;
        if (!mask[k] || seen[k]) continue;
        seen[k] = 1;
        found.push(k);
      }
  }
  return found;
}
