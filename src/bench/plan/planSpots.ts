import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { insideRing } from '../../geometry/index.ts';
import { distanceToRibbon, snapCorner } from '../../plan/index.ts';
import { pair } from '../parts/partEdits.ts';
import { spotsOf } from '../parts/spots.ts';
import type { Picked } from './picked.ts';
import { changeFlap, changePatch, moveCorner, stripsOf } from './planEdits.ts';

/** A place of the plan that can be taken hold of. */
export interface PlanSpot {
  picked: Picked;
  at: Point;
  /** The card with this spot moved. */
  moved(card: Card, to: Point): Card;
}

/** Corners of strips, patches and flaps, and the places of the parts. */
export function planSpots(card: Card): PlanSpot[] {
  return [...stripSpots(card), ...partSpots(card), ...patchSpots(card), ...flapSpots(card)];
}

function stripSpots(card: Card): PlanSpot[] {
  return stripsOf(card).flatMap((strip) =>
    strip.path.map((at, corner) => ({
      picked: { kind: 'strip' as const, id: strip.id, corner },
      at,
      moved: (now: Card, to: Point) => {
        const [before, after] = [strip.path[corner - 1], strip.path[corner + 1]];
        const others = stripsOf(now).filter(({ net }) => net !== strip.net);
        const apart = now.limits.clearance_mm + 1;
        const settled = snapCorner(to, before, after, strip.width_mm, now, others, apart);
        return moveCorner(now, strip.id, corner, settled.at);
      },
    })),
  );
}

function partSpots(card: Card): PlanSpot[] {
  return spotsOf(card).map(({ part, at, moved }) => ({ picked: { kind: 'part', id: part }, at, moved }));
}

function patchSpots(card: Card): PlanSpot[] {
  return card.patches.flatMap(({ id, outline }) =>
    outline.map((at, k) => ({
      picked: { kind: 'patch' as const, id },
      at,
      moved: (now: Card, to: Point) => changePatch(now, id, { outline: withPlace(outline, k, to) }),
    })),
  );
}

/** The two ends of the fold stay on the edge; the other corners of a flap can be moved. */
function flapSpots(card: Card): PlanSpot[] {
  return card.flaps.flatMap(({ id, fold, outline }) =>
    outline
      .map((at, k) => ({
        picked: { kind: 'flap' as const, id },
        at,
        moved: (now: Card, to: Point) => changeFlap(now, id, { outline: withPlace(outline, k, to) }),
      }))
      .filter(({ at }) => fold.every((end) => end[0] !== at[0] || end[1] !== at[1])),
  );
}

function withPlace(outline: [number, number][], k: number, to: Point): [number, number][] {
  return outline.map((each, i) => (i === k ? pair(to) : each));
}

/** The spot nearest a place, within a reach. */
export function planSpotAt(card: Card, [x, y]: Point, reach: number): PlanSpot | undefined {
  let best: PlanSpot | undefined;
  let least = reach;
  for (const spot of planSpots(card)) {
    const far = Math.hypot(spot.at[0] - x, spot.at[1] - y);
    if (far >= least) continue;
    best = spot;
    least = far;
  }
  return best;
}

/** What lies under a tap: a corner or part near it, else a strip, else a patch or flap. */
export function pickAt(card: Card, at: Point, reach: number): Picked | undefined {
  const spot = planSpotAt(card, at, reach);
  if (spot) return spot.picked;
  const strip = stripsOf(card).find(
    ({ path, width_mm }) => distanceToRibbon(at, { path, widthMm: width_mm }) <= reach / 3,
  );
  if (strip) return { kind: 'strip', id: strip.id };
  const patch = card.patches.find(({ outline }) => insideRing(at, outline));
  if (patch) return { kind: 'patch', id: patch.id };
  const flap = card.flaps.find(({ outline }) => insideRing(at, outline));
  return flap && { kind: 'flap', id: flap.id };
}
