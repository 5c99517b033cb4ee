import type { Candidate } from './quads.ts';
import { applyHomography, homographyFromUnitSquare } from '../homography.ts';
import type { WorkPicture } from './work.ts';

const grid = 16;
/** Neighbouring samples this different (levels) lie across an edge: tape, a lamp, a line. */
const edgeLevels = 12;
/** A base with tape on it has at least this share of such neighbours; a blank card beside it has none. */
const busyShare = 0.05;
/** A base's middle lies within this many half diagonals of the picture's, since it is what was photographed. */
const centredWithin = 0.3;

/** How blank a candidate is within, and how far off the picture's middle it lies; 0 for a usual base, about 1 at worst. */
export function unlikeliness(work: WorkPicture, { corners }: Candidate): [blank: number, offCentre: number] {
  const mid = corners.reduce<[number, number]>((s, p) => [s[0] + p[0] / 4, s[1] + p[1] / 4], [0, 0]);
  const half = Math.hypot(work.width, work.height) / 2;
  const off = Math.hypot(mid[0] - work.width / 2, mid[1] - work.height / 2) / half;
  const blank = Math.max(0, 1 - edgesWithin(work, corners) / busyShare);
  return [blank, Math.max(0, off - centredWithin)];
}

/** Share of neighbouring grid places within the figure, its rim left out, between which the colour jumps. */
function edgesWithin(work: WorkPicture, corners: Candidate['corners']): number {
  const m = homographyFromUnitSquare(corners);
  const read = (i: number, j: number, plane: number): number => {
    const [x, y] = applyHomography(m, [0.06 + (0.88 * i) / grid, 0.06 + (0.88 * j) / grid]);
    const column = Math.min(work.width - 1, Math.max(0, Math.floor(x)));
    const row = Math.min(work.height - 1, Math.max(0, Math.floor(y)));
    return work.planes[plane][row * work.width + column];
  };
  let jumps = 0;
  for (let j = 0; j <= grid; j++) {
    for (let i = 1; i <= grid; i++) {
      if (Math.abs(read(i, j, 0) - read(i - 1, j, 0)) > edgeLevels) jumps++;
      if (Math.abs(read(j, i, 0) - read(j, i - 1, 0)) > edgeLevels) jumps++;
    }
  }
  return jumps / (2 * grid * (grid + 1));
}
