import type { Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { applyHomography, homographyFromQuad } from '../homography.ts';
import { distort, lensOf, undistort } from '../lens.ts';
import { bendAt } from '../bow.ts';
import { profiles } from './fitSides.ts';
import type { FittedSides } from './fitSides.ts';
import { bendsOf, edgesAbout, sightsIn } from './followBow.ts';
import type { Sight } from './trackSide.ts';

/** The side's own edge lies this near to it, mm. */
const ownMm = 0.3;
/** Another lies beside it, outside, this far off, mm: the rim of thick paper, or the narrow shadow that it casts. */
const besideMm = [0.4, 1.2] as const;
/** It is so strong at least, in parts of the side's own. */
const leastStep = 0.4;
/** And seen along so much of the side. */
const leastShare = 0.45;

type Size = { width: number; height: number };

/**
 * Where a side shows two edges close beside each other, a picture does not tell which of them is the paper's: the
 * inner one where the sheet casts a narrow shadow, the outer one where its rim catches another light. The side is
 * laid between them, for then it is off by half their distance at most.
 * @param edges those about the sides
 */
export function betweenEdges(
  photo: Photo,
  fit: FittedSides,
  base: Size,
  pxPerMm: number,
  edges = edgesAbout(photo, fit, pxPerMm),
): FittedSides {
  const lens = lensOf(photo, fit.k1);
  const corners = fit.cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  const bends = fit.bow && bendsOf(fit.bow);
  const moves = sightsIn(corners, edges, base).map((places, side) => {
    const inward = side === 0 || side === 3 ? 1 : -1;
    return halfWayOut(places, ({ t, across }) => inward * (across - (bends ? bendAt(bends[side], t) : 0)));
  });
  if (moves.every((move) => move === 0)) return fit;
  const [top, right, bottom, left] = moves;
  const { width: w, height: h } = base;
  const toPx = homographyFromQuad(corners, base);
  const moved = (
    [
      [-left, -top],
      [w + right, -top],
      [w + right, h + bottom],
      [-left, h + bottom],
    ] as const
  ).map((p) => distort(lens, applyHomography(toPx, p))) as unknown as Quad;
  return { ...fit, cornersPx: moved };
}

/** Half the distance from a side's edge to the one outside of it, mm; 0 where there is none. */
function halfWayOut(places: Sight[][], inwardOf: (s: Sight) => number): number {
  const distances = places.flatMap((edges) => {
    const own = edges.find((s) => Math.abs(inwardOf(s)) < ownMm);
    if (!own) return [];
    const beside = edges.find((s) => {
      const out = -inwardOf(s);
      return out > besideMm[0] && out < besideMm[1] && s.step > leastStep * own.step;
    });
    return beside ? [inwardOf(own) - inwardOf(beside)] : [];
  });
  if (distances.length < leastShare * profiles) return 0;
  return distances.sort((a, b) => a - b)[distances.length >> 1] / 2;
}
