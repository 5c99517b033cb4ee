import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { turnCorners } from '../homography.ts';
import type { Outline } from '../types.ts';
import { findEdges } from './edges.ts';
import { fitSides } from './fitSides.ts';
import { findLines } from './lines.ts';
import { candidateQuads } from './quads.ts';
import type { Candidate } from './quads.ts';
import { workPicture } from './work.ts';

export interface BaseMm {
  width: number;
  height: number;
}

/**
 * Finds the base in a photograph by its four sides. The turn cannot be known from the outline alone: the corners
 * begin at the one nearest the picture's top left that the base's shape allows (`turnCorners` gives the others).
 * @param base its size in mm; undefined when not known, which makes the answer less certain
 * @returns undefined when nothing like a base is seen
 */
export async function findOutline(photo: Photo, base: BaseMm | undefined): Promise<Outline | undefined> {
  const work = workPicture(photo);
  const lines = findLines(findEdges(work), work.width, work.height, 90);
  const candidates = candidateQuads(lines, work, base, 400);
  const best = candidates[0];
  if (!best) return undefined;
  return outlineOf(photo, best, work.step, base);
}

function outlineOf(
  photo: Photo,
  best: Candidate,
  step: number,
  base: BaseMm | undefined,
): Outline | undefined {
  const quad = best.corners.map(([x, y]) => [x * step, y * step]) as unknown as Quad;
  const pxPerMm = base ? perimeter(quad) / (2 * (base.width + base.height)) : perimeter(quad) / 500;
  const fitted = fitSides(photo, quad, 3 * step + 2, pxPerMm);
  if (!fitted) return undefined;
  return {
    cornersPx: pictureUp(fitted.cornersPx, base),
    certainty: Math.min(...fitted.seen),
    k1: fitted.k1,
    residualMm: fitted.residualPx / pxPerMm,
  };
}

function perimeter(q: Quad): number {
  return q.reduce((sum, p, i) => sum + Math.hypot(q[(i + 1) % 4][0] - p[0], q[(i + 1) % 4][1] - p[1]), 0);
}

/** Turns the corners so that the first lies uppermost left; by halves where the base is not square. */
function pictureUp(quad: Quad, base: BaseMm | undefined): Quad {
  const square = !base || Math.abs(base.width - base.height) < 0.01 * base.width;
  const turns = square ? [0, 1, 2, 3] : [0, 2];
  const lean = ([x, y]: Point) => x + y;
  return turns.map((t) => turnCorners(quad, t)).reduce((a, b) => (lean(b[0]) < lean(a[0]) ? b : a));
}
