import type { Quad } from '../../geometry/index.ts';
import { applyHomography, homographyFromQuad, invertHomography } from '../homography.ts';
import type { Edges } from './edges.ts';

/** Bins of the direction, a quarter turn altogether: sides and strips square to them count as one. */
const bins = 45;
const binDegrees = 90 / bins;
/** Edges this near to the sides belong to them, as a share of the sheet. */
const rim = 0.04;
/** Directions within this many bins of the sides' run with them; a lens and a hand's laying bend them by as much. */
const along = 2;
/** Fewer edges than this, work px, tell no direction. */
const leastEdges = 60;

/**
 * How much of what lies on a figure runs in a direction of its own rather than along the sides, 0..1: strips of tape are laid along
 * the sheet's sides, so where they run askew the figure is likely a larger sheet, on which the base lies turned.
 * @param figure work px
 * @returns `against`: the clearest direction off the sides, as a share of it and of that along them, 0.3 where there is little to
 * tell; `of`: the same as a share of all edges
 */
export function askew(
  edges: Edges,
  figure: Quad,
  base: { width: number; height: number },
): { against: number; of: number } {
  const toMm = invertHomography(homographyFromQuad(figure, base));
  const votes = new Float64Array(bins);
  let all = 0;
  for (let i = 0; i < edges.count; i++) {
    const from = applyHomography(toMm, [edges.x[i], edges.y[i]]);
    const [u, v] = [from[0] / base.width, from[1] / base.height];
    if (u < rim || v < rim || u > 1 - rim || v > 1 - rim) continue;
    const [dx, dy] = [-Math.sin(edges.angle[i]), Math.cos(edges.angle[i])];
    const to = applyHomography(toMm, [edges.x[i] + dx, edges.y[i] + dy]);
    const degrees = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI + 180;
    const bin = (degrees % 90) / binDegrees;
    const low = Math.floor(bin);
    const w = edges.weight[i];
    votes[low % bins] += w * (1 - (bin - low));
    votes[(low + 1) % bins] += w * (bin - low);
    all += w;
  }
  if (all < leastEdges) return { against: 0.3, of: 0 };
  // What runs in no direction, paint or a hand's hair lines, gives every bin the same.
  const usual = Float64Array.from(votes).sort()[bins >> 1];
  const peak = (k: number) =>
    Math.max(0, votes[(k + bins - 1) % bins] + votes[k] + votes[(k + 1) % bins] - 3 * usual);
  let own = 0;
  let other = 0;
  for (let k = 0; k < bins; k++) {
    const off = Math.min(k, bins - k);
    if (off <= along) own = Math.max(own, peak(k));
    else if (off > along + 1) other = Math.max(other, peak(k));
  }
  return { against: own + other === 0 ? 0.3 : other / (own + other), of: other / all };
}
