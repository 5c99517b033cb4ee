import type { Point } from '../../geometry/index.ts';
import { components } from '../components.ts';
import { pixelAt, type Patch } from './patch.ts';
import type { Across } from './lines.ts';

/** A part of a strip that is less than this is none, mm^2, nor one that is less than this share of the line's length squared, seen within so much of its ends, mm. */
const leastMm2 = 1.5;
const leastShare = 0.15;
const roundMm = 2.5;

/**
 * Whether a line parts the copper that it crosses, seen near it alone: what hangs together by another way round is
 * parted all the same.
 */
export function parts(patch: Patch, { from, to, way, normal, length }: Across): boolean {
  const { pxPerMm, width, copper } = patch;
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const reach = length / 2 + roundMm * pxPerMm;
  const i0 = Math.max(0, Math.floor(middle[0] - reach));
  const j0 = Math.max(0, Math.floor(middle[1] - reach));
  const w = Math.min(width, Math.ceil(middle[0] + reach)) - i0;
  const h = Math.min(patch.height, Math.ceil(middle[1] + reach)) - j0;
  const inside = new Uint8Array(w * h);
  const half = length / 2 + 3;
  for (let j = 0, n = 0; j < h; j++) {
    for (let i = 0; i < w; i++, n++) {
      const k = (j0 + j) * width + i0 + i;
      if (!copper[k]) continue;
      const [dx, dy] = [i0 + i + 0.5 - middle[0], j0 + j + 0.5 - middle[1]];
      if (dx * dx + dy * dy > reach * reach) continue;
      const onLine =
        Math.abs(dx * normal[0] + dy * normal[1]) < 1 && Math.abs(dx * way[0] + dy * way[1]) < half;
      if (!onLine) inside[n] = 1;
    }
  }
  const { labels, count } = components(inside, w, h, 8);
  const areas = new Int32Array(count + 1);
  for (const label of labels) areas[label]++;
  const least = Math.max(leastMm2 * pxPerMm ** 2, leastShare * length * length);
  const sides = [new Set<number>(), new Set<number>()];
  for (let t = -length / 2; t <= length / 2; t += 1) {
    for (const side of [0, 1] as const) {
      const d = side ? 2 : -2;
      const x = middle[0] + t * way[0] + d * normal[0];
      const y = middle[1] + t * way[1] + d * normal[1];
      if (pixelAt(patch, x, y) < 0) continue;
      const [i, j] = [Math.floor(x) - i0, Math.floor(y) - j0];
      if (i < 0 || j < 0 || i >= w || j >= h) continue;
      const label = labels[j * w + i];
      if (label && areas[label] >= least) sides[side].add(label);
    }
  }
  return sides.every((side) => side.size > 0) && [...sides[0]].every((label) => !sides[1].has(label));
}
