import type { Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { lensOf } from '../lens.ts';
import { lookAcross } from './profiles.ts';

/** How far outside a side another edge would be its rival, mm: nearer is the same edge, farther another thing. */
const nearestMm = 0.6;
const farthestMm = 2.6;
const profiles = 70;

/**
 * The greatest share, over the four sides, of places where the strongest edge about the side lies outside of it: there a
 * printed rule, a fold or a strip beside the border has been taken for the border.
 */
export function outsideEdge(photo: Photo, corners: Quad, k1: number, pxPerMm: number): number {
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  const plan = { count: profiles, reach: Math.ceil(farthestMm * pxPerMm), depth };
  const shares = [0, 1, 2, 3].map((side) => {
    const [a, b] = [corners[side], corners[(side + 1) % 4]];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const outward = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    const out = lookAcross(photo, corners, side, lensOf(photo, k1), plan).filter(({ at }) => {
      const off = (at[0] - a[0]) * outward[0] + (at[1] - a[1]) * outward[1];
      return off > nearestMm * pxPerMm;
    });
    return out.length / profiles;
  });
  return Math.max(...shares);
}
