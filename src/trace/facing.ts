import type { Point } from '../geometry/index.ts';
import type { Piece, StripEnd } from './types.ts';

/** mm: ends farther apart than this do not belong to one cut strip. */
const farthest = 6;

/** Two strip ends that look at each other along one line, and the straight way from within the one to within the other. */
export interface Facing {
  a: Pick<StripEnd, 'piece' | 'at'>;
  b: Pick<StripEnd, 'piece' | 'at'>;
  path: Point[];
  widthMm: number;
}

export function facingEnds(pieces: readonly Piece[]): Facing[] {
  const ends = pieces.flatMap((piece) => piece.ends);
  const found: Facing[] = [];
  ends.forEach((a, n) => {
    for (const b of ends.slice(n + 1)) {
      const away: Point = [b.at[0] - a.at[0], b.at[1] - a.at[1]];
      const distance = Math.hypot(...away);
      if (distance > farthest) continue;
      const widthMm = Math.min(a.widthMm, b.widthMm);
      const opposed = -(a.out[0] * b.out[0] + a.out[1] * b.out[1]);
      const aside = Math.abs(away[0] * a.out[1] - away[1] * a.out[0]);
      if (opposed < 0.8 || aside > 0.5 * widthMm) continue;
      const back = 4;
      const from: Point = [a.at[0] - back * a.out[0], a.at[1] - back * a.out[1]];
      const to: Point = [b.at[0] - back * b.out[0], b.at[1] - back * b.out[1]];
      found.push({ a, b, path: [from, to], widthMm });
    }
  });
  return found;
}
