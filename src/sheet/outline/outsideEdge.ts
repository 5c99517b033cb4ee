import type { Photo } from '../../photo/index.ts';
import { bendAt, inwardBends } from '../bow.ts';
import { lensOf } from '../lens.ts';
import type { Outline } from '../types.ts';
import { lookAcross } from './profiles.ts';

/** How far outside a side another edge would be its rival, mm: nearer is the same edge, farther another thing. */
const nearestMm = 0.6;
const farthestMm = 2.6;
const profiles = 70;

/**
 * The greatest share, over the four sides, of places where the strongest edge about the side lies outside of it: there a
 * printed rule, a fold or a strip beside the border has been taken for the border.
 */
export function outsideEdge(
  photo: Photo,
  { cornersPx, k1, bow }: Pick<Outline, 'cornersPx' | 'k1' | 'bow'>,
  pxPerMm: number,
): number {
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  const plan = { count: profiles, reach: Math.ceil(farthestMm * pxPerMm), depth };
  const bends = bow && inwardBends(bow);
  const shares = [0, 1, 2, 3].map((side) => {
    const [a, b] = [cornersPx[side], cornersPx[(side + 1) % 4]];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const outward = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    const out = lookAcross(photo, cornersPx, side, lensOf(photo, k1), plan).filter(({ at, along }) => {
      const off = (at[0] - a[0]) * outward[0] + (at[1] - a[1]) * outward[1];
      return off / pxPerMm + (bends ? bendAt(bends[side], along) : 0) > nearestMm;
    });
    return out.length / profiles;
  });
  return Math.max(...shares);
}
