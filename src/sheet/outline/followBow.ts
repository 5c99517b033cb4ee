import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { bendAt, bowOf } from '../bow.ts';
import type { Bow } from '../bow.ts';
import { applyHomography, homographyFromQuad, invertHomography } from '../homography.ts';
import { distort, lensOf, undistort } from '../lens.ts';
import { endsSeen, leastAndMean, profiles } from './fitSides.ts';
import type { FittedSides } from './fitSides.ts';
import { crestsAcross } from './profiles.ts';
import { mostlyShared, trackSide } from './trackSide.ts';
import type { Sight } from './trackSide.ts';

/** Sides are looked for this far off the straight ones, mm. */
const reachMm = 3;
/** Edges looked at on each profile. */
const crests = 6;
/** Of the edges this near to the side, mm, the strongest counts. */
const aboutMm = 0.6;

type Size = { width: number; height: number };

/** Fitted sides, and the edges about them where these have been looked for already. */
interface Followed {
  fit: FittedSides;
  edges?: Seen;
}

/**
 * Fitted sides that bow where the sheet is curled or creased: the corners are where the bowed sides meet. Straight
 * sides would miss them by millimetres, for each follows but a part of its edge.
 * @returns the straight sides themselves where the picture shows nothing better
 */
export function followBow(photo: Photo, fit: FittedSides, base: Size, pxPerMm: number): Followed {
  const edges = edgesAbout(photo, fit, pxPerMm);
  const first = bowOnce(photo, fit, edges, base, pxPerMm);
  if (!first) return { fit, edges };
  // From corners that are nearer now the ends of the sides are seen better.
  const nearer = edgesAbout(photo, first, pxPerMm);
  const second = bowOnce(photo, first, nearer, base, pxPerMm);
  return second ? { fit: second } : { fit: first, edges: nearer };
}

function bowOnce(
  photo: Photo,
  fit: FittedSides,
  seen: Seen,
  base: Size,
  pxPerMm: number,
): FittedSides | undefined {
  const lens = lensOf(photo, fit.k1);
  const before = fit.cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  const found = bowOf(before, tracksIn(seen, before, fit.bow, base), base);
  if (!found) return undefined;
  const bowed = describe(found, seen, base, pxPerMm);
  if (sum(bowed.seen) < sum(fit.seen)) return undefined;
  const cornersPx = found.cornersPx.map((p) => distort(lens, p)) as unknown as Quad;
  return { ...fit, ...bowed, cornersPx, bow: found.bow };
}

/** Edges at each place along each side, strongest first, in straight-line px. */
type Seen = { at: Point; step: number }[][][];

export function edgesAbout(
  photo: Photo,
  { cornersPx, k1 }: { cornersPx: Quad; k1: number },
  pxPerMm: number,
): Seen {
  const lens = lensOf(photo, k1);
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  const plan = { count: profiles, reach: Math.ceil(reachMm * pxPerMm), depth };
  return [0, 1, 2, 3].map((side) =>
    crestsAcross(photo, cornersPx, side, lens, plan, crests).map((of) =>
      of.filter(({ onRim }) => !onRim).map(({ at, step }) => ({ at: undistort(lens, at), step })),
    ),
  );
}

/** Of those edges the ones that each side runs through, straight-line px. */
function tracksIn(seen: Seen, corners: Quad, known: Bow | undefined, base: Size): Point[][] {
  const bends = known && bendsOf(known);
  return sightsIn(corners, seen, base).map((places, side) =>
    trackSide(places, (t) => (bends ? bendAt(bends[side], t) : 0), mostlyShared).map(({ t, across }) =>
      placeOn(side, t, across, corners, base),
    ),
  );
}

/** The bends of the four sides, as their edges are sighted: along x or y, across as x or y grows. */
export const bendsOf = ({ top, right, bottom, left }: Bow) => [top, right, bottom, left];

/** The edges in the frame of a sheet with these corners. */
export function sightsIn(corners: Quad, seen: Seen, base: Size): Sight[][][] {
  const toMm = invertHomography(homographyFromQuad(corners, base));
  const { width: w, height: h } = base;
  return seen.map((places, side) =>
    places.map((edges) =>
      edges.map(({ at, step }) => {
        const [x, y] = applyHomography(toMm, at);
        const across = side === 0 ? y : side === 1 ? x - w : side === 2 ? y - h : x;
        return { t: side % 2 === 0 ? x / w : y / h, across, step };
      }),
    ),
  );
}

function placeOn(
  side: number,
  t: number,
  across: number,
  corners: Quad,
  { width: w, height: h }: Size,
): Point {
  const mm: Point =
    side === 0
      ? [t * w, across]
      : side === 1
        ? [w + across, t * h]
        : side === 2
          ? [t * w, h + across]
          : [across, t * h];
  return applyHomography(homographyFromQuad(corners, { width: w, height: h }), mm);
}

/** How well the bowed sides are seen, as `FittedSides` tells it of straight ones. */
function describe(
  { cornersPx, bow }: { cornersPx: Quad; bow: Bow },
  seen: Seen,
  base: Size,
  pxPerMm: number,
): Pick<FittedSides, 'seen' | 'ends' | 'steps' | 'residualPx'> {
  const nearMm = Math.max(1.2 / pxPerMm, 0.15);
  const bends = bendsOf(bow);
  const distances: number[] = [];
  const sides = sightsIn(cornersPx, seen, base).map((places, side) => {
    const on = places.flatMap((edges) => {
      const off = ({ t, across }: Sight) => Math.abs(across - bendAt(bends[side], t));
      const strongest = edges.find((s) => off(s) < aboutMm);
      if (!strongest) return [];
      if (off(strongest) < 3 * nearMm) distances.push(off(strongest) * pxPerMm);
      return off(strongest) < nearMm ? [strongest] : [];
    });
    const steps = on.map(({ step }) => step).sort((a, b) => a - b);
    return {
      share: on.length / profiles,
      ends: endsSeen(on.map(({ t }) => t)),
      step: steps[steps.length >> 1] ?? 0,
    };
  });
  distances.sort((a, b) => a - b);
  return {
    seen: sides.map(({ share }) => share) as unknown as FittedSides['seen'],
    ends: leastAndMean(sides.flatMap(({ ends }) => ends)),
    steps: sides.map(({ step }) => step) as unknown as FittedSides['steps'],
    residualPx: distances[Math.floor(0.95 * (distances.length - 1))] ?? Infinity,
  };
}

const sum = (v: readonly number[]) => v.reduce((s, x) => s + x, 0);
