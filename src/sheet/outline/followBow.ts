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
/** The same for a side that the straight one has lost at one end: a strong curl runs so far off it. */
const far = { reachMm: 8, crests: 10 };
/** An end is lost where so little of its fifth has its strongest edge on the straight side, and the other holds so much. */
const lost = { most: 0.35, other: 0.45, onMm: 0.3 };
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
  const strayed = strayedSides(photo, fit, edges, base);
  const first =
    (strayed.some(Boolean) &&
      bowOnce(photo, fit, edgesAbout(photo, fit, pxPerMm, strayed, edges), base, pxPerMm)) ||
    bowOnce(photo, fit, edges, base, pxPerMm);
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

/**
 * The edges about four sides.
 * @param strayed sides about which they are looked for farther off
 * @param known those of the other sides, where they have been looked for already
 */
export function edgesAbout(
  photo: Photo,
  { cornersPx, k1 }: { cornersPx: Quad; k1: number },
  pxPerMm: number,
  strayed: readonly boolean[] = [],
  known?: Seen,
): Seen {
  const lens = lensOf(photo, k1);
  const depth = Math.max(2, Math.min(8, Math.round(0.35 * pxPerMm)));
  return [0, 1, 2, 3].map((side) => {
    if (known && !strayed[side]) return known[side];
    const look = strayed[side] ? far : { reachMm, crests };
    const plan = { count: profiles, reach: Math.ceil(look.reachMm * pxPerMm), depth };
    return crestsAcross(photo, cornersPx, side, lens, plan, look.crests).map((of) =>
      of.filter(({ onRim }) => !onRim).map(({ at, step }) => ({ at: undistort(lens, at), step })),
    );
  });
}

/** Which straight sides run along their edge at one end and off it at the other, as along a half of a strong curl. */
function strayedSides(photo: Photo, fit: FittedSides, seen: Seen, base: Size): boolean[] {
  const lens = lensOf(photo, fit.k1);
  const straight = fit.cornersPx.map((p) => undistort(lens, p)) as unknown as Quad;
  return sightsIn(straight, seen, base).map((places) => {
    const on = places.flatMap(([strongest]) =>
      strongest && Math.abs(strongest.across) < lost.onMm ? [strongest.t] : [],
    );
    const [least, most] = endsSeen(on).sort((a, b) => a - b);
    return least < lost.most && most > lost.other;
  });
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
): Pick<FittedSides, 'seen' | 'ends' | 'steps' | 'seenAt' | 'residualPx'> {
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
      at: on.map(({ t }) => t),
      step: steps[steps.length >> 1] ?? 0,
    };
  });
  distances.sort((a, b) => a - b);
  return {
    seen: sides.map(({ share }) => share) as unknown as FittedSides['seen'],
    ends: leastAndMean(sides.flatMap(({ ends }) => ends)),
    steps: sides.map(({ step }) => step) as unknown as FittedSides['steps'],
    seenAt: sides.map(({ at }) => at),
    residualPx: distances[Math.floor(0.95 * (distances.length - 1))] ?? Infinity,
  };
}

const sum = (v: readonly number[]) => v.reduce((s, x) => s + x, 0);
