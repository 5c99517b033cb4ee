import type { Point, Quad } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { applyHomography, homographyFromQuad, invertHomography } from './homography.ts';
import { choose, judgeAll } from './outline/choose.ts';
import { look } from './outline/propose.ts';
import { fitSides } from './outline/fitSides.ts';
import { candidateQuads } from './outline/quads.ts';

/** @source ISO/IEC 7810, format ID-1, mm */
export const idCardMm = { width: 85.6, height: 53.98 } as const;

/** A bank or library card lying beside the base, and what it makes the base measure. */
export interface IdCard {
  cornersPx: Quad;
  baseMm: { width: number; height: number };
  /** How far the base's opposite sides and its angles disagree through the card's scale; 0 = a perfect rectangle. */
  skew: number;
}

/** Beyond this the two do not lie in one plane, or one of them is something else. */
const mostSkew = 0.04;

/**
 * Finds an ID-1 card in the same plane as the base and measures the base by it.
 * @param baseCornersPx the base's own corners, as found or set by hand
 * @returns undefined when no such card is seen
 */
export function findIdCard(photo: Photo, baseCornersPx: Quad): IdCard | undefined {
  const { work, lines } = look(photo);
  const onWork = baseCornersPx.map(([x, y]) => [x / work.step, y / work.step]) as unknown as Quad;
  const candidates = candidateQuads(lines, work, idCardMm, 400, 0.01).filter((c) => {
    const mid = c.corners.reduce<[number, number]>((s, p) => [s[0] + p[0] / 4, s[1] + p[1] / 4], [0, 0]);
    return !within(mid, onWork) && measureBase(c.corners, onWork).skew < 2 * mostSkew;
  });
  for (const { candidate } of choose(judgeAll(work, candidates, idCardMm), 3)) {
    const quad = candidate.corners.map(([x, y]) => [x * work.step, y * work.step]) as unknown as Quad;
    const pxPerMm = Math.hypot(quad[1][0] - quad[0][0], quad[1][1] - quad[0][1]) / idCardMm.width;
    const fit = fitSides(photo, quad, 3 * work.step + 2, pxPerMm);
    if (!fit || Math.min(...fit.seen) < 0.5) continue;
    const measured = measureBase(fit.cornersPx, baseCornersPx);
    if (measured.skew < mostSkew) return { cornersPx: fit.cornersPx, ...measured };
  }
  return undefined;
}

/**
 * The base's size through the card's scale: both lie in one plane, so the card's homography measures the base too.
 * @returns mm, means of opposite sides
 */
export function measureBase(cardPx: Quad, basePx: Quad): Pick<IdCard, 'baseMm' | 'skew'> {
  const toMm = invertHomography(homographyFromQuad(cardPx, idCardMm));
  const p = basePx.map((c) => applyHomography(toMm, c));
  const side = (i: number) => Math.hypot(p[(i + 1) % 4][0] - p[i][0], p[(i + 1) % 4][1] - p[i][1]);
  const width = (side(0) + side(2)) / 2;
  const height = (side(1) + side(3)) / 2;
  const uneven = Math.max(Math.abs(side(0) - side(2)) / width, Math.abs(side(1) - side(3)) / height);
  const diagonals =
    Math.hypot(p[2][0] - p[0][0], p[2][1] - p[0][1]) / Math.hypot(p[3][0] - p[1][0], p[3][1] - p[1][1]);
  return { baseMm: { width, height }, skew: Math.max(uneven, Math.abs(Math.log(diagonals))) };
}

/** Whether a point lies in a convex quadrilateral, whichever way round. */
function within([x, y]: Point, q: Quad): boolean {
  let sign = 0;
  for (let i = 0; i < 4; i++) {
    const a = q[i];
    const b = q[(i + 1) % 4];
    const turn = Math.sign((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]));
    if (sign !== 0 && turn !== sign) return false;
    sign = turn;
  }
  return true;
}
