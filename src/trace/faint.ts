import { components, squaredDistance, type CopperMask } from '../copper/index.ts';
import type { Point } from '../geometry/index.ts';
import { toMm, type Frame } from './frame.ts';
import type { FaintJoin } from './types.ts';

/** Less likely than this, of 255, is paper: a line that leads on at the lower level, or stands alone at the upper. */
const levels = [26, 15];
/** Lines found at both lie so near to each other, mm. */
const sameMm = 3;
/** Round copper its own blurred border is as faint, mm. */
const haloMm = 0.35;
/** What begins and ends so near to copper leads up to it, mm. */
const meetsMm = haloMm + 0.25;
/** Wider is a shadow or a stain; longer leads from strip to strip by chance; shorter is a narrow clearance. mm. */
const widestMm = 1.3;
const longestMm = 14;
const shortestMm = 1;
/** mm^2: less is a grain. */
const leastMm2 = 0.08;

/**
 * Thin lines from one piece to another that may be copper, though too faint for the mask: a sliver or a splash narrower
 * than the picture shows plainly.
 */
export function faintJoins(labels: Int32Array, mask: CopperMask): FaintJoin[] {
  const away = squaredDistance(mask.filled, mask.width, mask.height);
  const found = levels.flatMap((level) => linesFrom(level, labels, mask, away));
  const apart = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]) > sameMm;
  return found.filter(({ at }, n) => found.slice(0, n).every((other) => apart(other.at, at)));
}

/** @param away squared distance of each pixel to the copper, px^2 */
function linesFrom(level: number, labels: Int32Array, mask: CopperMask, away: Float32Array): FaintJoin[] {
  const { width, height, pxPerMm } = mask;
  const halo = (haloMm * pxPerMm) ** 2;
  const free = new Uint8Array(width * height);
  for (let k = 0; k < free.length; k++) free[k] = mask.likelihood[k] >= level && away[k] > halo ? 1 : 0;
  const { labels: lines, count } = components(free, width, height, 8);
  const seen = Array.from({ length: count + 1 }, () => ({ area: 0, sum: 0, meets: new Map<number, Meet>() }));
  for (let k = 0; k < lines.length; k++) {
    if (!lines[k]) continue;
    const line = seen[lines[k]];
    line.area++;
    line.sum += mask.likelihood[k];
    if (away[k] <= (meetsMm * pxPerMm) ** 2) meet(line.meets, labels, mask, k);
  }
  return seen.flatMap(({ area, sum, meets }) => {
    if (area < leastMm2 * pxPerMm ** 2 || meets.size < 2) return [];
    const [a, b] = [...meets.values()].sort((p, q) => p.px - q.px);
    const [atA, atB] = [toMm(mask, ...a.at), toMm(mask, ...b.at)];
    const mm = Math.hypot(atA[0] - atB[0], atA[1] - atB[1]);
    const widthMm = area / pxPerMm ** 2 / Math.max(0.3, mm - 2 * haloMm);
    if (mm < shortestMm || mm > longestMm || widthMm > widestMm) return [];
    const at: Point = [(atA[0] + atB[0]) / 2, (atA[1] + atB[1]) / 2];
    return [{ at, atA, atB, mm, widthMm, chance: sum / area / 255 }];
  });
}

/** The copper that a line comes nearest to, and how near, px. */
interface Meet {
  px: number;
  at: Point;
}

/** Notes each piece within reach of a pixel, at its nearest place. */
function meet(
  meets: Map<number, Meet>,
  labels: Int32Array,
  { width, height, pxPerMm }: Frame,
  k: number,
): void {
  const reach = Math.ceil(meetsMm * pxPerMm);
  const [i, j] = [k % width, Math.floor(k / width)];
  for (let y = Math.max(0, j - reach); y <= Math.min(height - 1, j + reach); y++) {
    for (let x = Math.max(0, i - reach); x <= Math.min(width - 1, i + reach); x++) {
      const id = labels[y * width + x];
      const px = Math.hypot(x - i, y - j);
      if (id && px <= meetsMm * pxPerMm && px < (meets.get(id)?.px ?? Infinity))
        meets.set(id, { px, at: [x + 0.5, y + 0.5] });
    }
  }
}
