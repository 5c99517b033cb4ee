import type { Lamp } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { barePaperMm, isUnderBody, liesOnBody } from './lampBody.ts';
import { nearPieces, type NearPiece } from './nearest.ts';
import type { PadPlace } from './types.ts';

// Common practice, no source: slab lamps are 3 to 5 mm long and as wide as a pad; legs are longer and narrower.
/** A body hides the copper at its pad so far outward, mm, and this share of the pads' distance more. */
const hidden = { mm: 1.3, share: 0.12 };
/** A pad is about this half as wide, mm, the tap's own error in it: copper farther aside does not meet it. */
const asideMm = 1.2;
/** Copper is looked for up to here to say how far off a pad is, mm. */
const lookMm = 6;

/** That much bare paper between a lamp's body and the copper shows that its pad does not reach it, mm. */
const bareMm = 0.4;
/** A body that the picture shows hides the copper at its pad so far at most, mm: a sticker's does. */
const bodyReachMm = 4;
/** How sure it is at most that a pad hangs over paper, and at least where bare paper shows beside it. */
const mostCertain = 0.97;
const bareCertain = 0.9;

/** Both pads of a lamp laid on the copper of their own side of its body. */
export function lampPads(traced: Traced, lamp: Lamp): PadPlace[] {
  return [
    pad(traced, `${lamp.id}+`, lamp.plus, lamp.minus),
    pad(traced, `${lamp.id}-`, lamp.minus, lamp.plus),
  ];
}

function pad(traced: Traced, name: string, at: Point, other: Point): PadPlace {
  const middle: Point = [(at[0] + other[0]) / 2, (at[1] + other[1]) / 2];
  const spacing = Math.hypot(at[0] - other[0], at[1] - other[1]) || 1;
  const out: Point = [(at[0] - other[0]) / spacing, (at[1] - other[1]) / spacing];
  const along = (p: Point) => (p[0] - at[0]) * out[0] + (p[1] - at[1]) * out[1];
  const aside = (p: Point) => Math.abs((p[1] - at[1]) * out[0] - (p[0] - at[0]) * out[1]);
  const reach = hidden.mm + hidden.share * spacing;
  // What lies beyond the body's middle belongs to the other pad.
  const ownSide = (p: Point) => along(p) > -0.38 * spacing;
  const meets = (p: Point) => ownSide(p) && aside(p) <= asideMm;
  const itself = lampItself(traced, middle, out, spacing);
  const copper = (near: NearPiece) => !itself.has(near.piece);
  const within = nearPieces(traced, at, reach, meets).filter(copper);
  const onBody = liesOnBody(traced, at);
  const apart = ({ at: p }: NearPiece) => onBody && barePaperMm(traced, at, p) >= bareMm;
  const outward = (p: Point) => meets(p) && along(p) > -asideMm;
  const under = (p: NearPiece) => copper(p) && isUnderBody(traced, at, p.at);
  const shown = within.filter((near) => !apart(near));
  const [near, next] =
    onBody && shown.length === 0 ? nearPieces(traced, at, bodyReachMm, outward).filter(under) : shown;
  if (near)
    return { pad: name, at, piece: near.piece, mm: near.mm, certainty: certaintyOn(near, next, reach) };
  const missed = nearPieces(traced, at, lookMm, ownSide).find(copper);
  // Only what the body cannot hide tells that the pad hangs over paper, unless the picture shows that paper.
  const beyond = missed
    ? Math.hypot(Math.max(0, along(missed.at) - reach), Math.max(0, aside(missed.at) - asideMm))
    : Infinity;
  const told = Math.min(mostCertain, 0.6 + 0.25 * beyond);
  return {
    pad: name,
    at,
    middle,
    piece: 0,
    mm: missed?.mm ?? Infinity,
    certainty: within.length > 0 || (missed && apart(missed)) ? Math.max(told, bareCertain) : told,
  };
}

/** A body is at most so wide to each side of its axis, mm, and so much longer than its pads are apart (common practice, no source). */
const body = { asideMm: 2.7, moreMm: 1.6 };

/** Pieces that lie wholly on the lamp: its own bright or grey parts, taken for copper. */
function lampItself(traced: Traced, [mx, my]: Point, [ux, uy]: Point, spacing: number): Set<number> {
  const within = ([x, y]: Point) =>
    Math.abs((x - mx) * ux + (y - my) * uy) < spacing / 2 + body.moreMm &&
    Math.abs((y - my) * ux - (x - mx) * uy) < body.asideMm;
  return new Set(
    traced.pieces
      .filter(
        ({ box: { x0, y0, x1, y1 } }) =>
          within([x0, y0]) && within([x1, y0]) && within([x1, y1]) && within([x0, y1]),
      )
      .map(({ id }) => id),
  );
}

/** Less sure the farther the copper, and where another piece is about as near. */
function certaintyOn(near: NearPiece, next: NearPiece | undefined, reach: number): number {
  const far = 0.98 - 0.4 * Math.max(0, near.mm / reach - 0.5);
  return next && next.mm - near.mm < 0.4 ? Math.min(far, 0.6) : far;
}
