import type { Card, PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { sidesOf } from '../../parts/index.ts';
import { segmentsOf } from '../strip/ribbon.ts';

/** A place that a hand let go of, put where it was most likely meant. */
export interface Snapped {
  at: Point;
  /** What drew it: a pad of a lamp, the cell or a contact, a fold angle, an even spacing beside another strip; nothing. */
  by: 'pad' | 'angle' | 'spacing' | 'none';
  /** Pad or strip that drew it. */
  to?: string;
}

const PAD_MM = 3;
const SPACING_MM = 1.2;
/** Degrees. */
const ANGLE = 8;

/**
 * Snaps the end of a piece being drawn: to a pad first, then beside another strip at the given clearance, then to a
 * turn of 45 or 90 degrees.
 * @param from where the piece begins; undefined at a strip's first place
 */
export function snap(
  at: Point,
  from: Point | undefined,
  widthMm: number,
  card: Card,
  strips: PlanStrip[],
  clearanceMm: number,
): Snapped {
  const pad = nearestPad(at, card);
  if (pad) return { at: pad.at, by: 'pad', to: pad.id };
  if (!from) return { at, by: 'none' };
  const turned = snapAngle(at, from);
  const spaced = snapSpacing(turned ?? at, from, widthMm, strips, clearanceMm);
  if (spaced) return spaced;
  return turned ? { at: turned, by: 'angle' } : { at, by: 'none' };
}

/** A corner between two others may be drawn so far, mm, to stand on a fold angle of both. */
const CORNER_MM = 4;

/**
 * Snaps a corner that is dragged between its neighbours: to a pad first, then to where fold angles of both neighbours
 * meet, then as an end of the piece from the one before.
 * @param before the place before it on the strip, and the one after; undefined at a strip's end
 */
export function snapCorner(
  at: Point,
  before: Point | undefined,
  after: Point | undefined,
  widthMm: number,
  card: Card,
  strips: PlanStrip[],
  clearanceMm: number,
): Snapped {
  const free = snap(at, before ?? after, widthMm, card, strips, clearanceMm);
  if (free.by === 'pad' || !before || !after) return free;
  const [best] = foldPlaces(before, after)
    .map((place) => ({ place, d: Math.hypot(place[0] - at[0], place[1] - at[1]) }))
    .filter(({ d }) => d <= CORNER_MM)
    .sort((a, b) => a.d - b.d);
  return best ? { at: best.place, by: 'angle' } : free;
}

/** Places from which both neighbours lie at a multiple of 45 degrees. */
function foldPlaces(a: Point, b: Point): Point[] {
  const ways = [0, 1, 2, 3].map((k): Point => [Math.cos((k * Math.PI) / 4), Math.sin((k * Math.PI) / 4)]);
  return ways.flatMap((one) =>
    ways
      .filter((other) => other !== one)
      .map((other): Point => {
        const cross = one[0] * other[1] - one[1] * other[0];
        const t = ((b[0] - a[0]) * other[1] - (b[1] - a[1]) * other[0]) / cross;
        return [a[0] + t * one[0], a[1] + t * one[1]];
      }),
  );
}

function nearestPad(at: Point, card: Card): { id: string; at: Point } | undefined {
  const pads = [
    ...card.lamps.flatMap(({ id, plus, minus }) => [
      { id: `${id}+`, at: plus as Point },
      { id: `${id}-`, at: minus as Point },
    ]),
    ...card.contacts.flatMap((contact) =>
      (sidesOf(contact) ?? []).map((side, k) => ({ id: `${contact.id}${k ? 'b' : 'a'}`, at: side })),
    ),
    ...(card.cell ? [{ id: 'cell', at: card.cell.at as Point }] : []),
  ];
  return pads
    .map((pad) => ({ ...pad, d: Math.hypot(pad.at[0] - at[0], pad.at[1] - at[1]) }))
    .filter(({ d }) => d <= PAD_MM)
    .sort((a, b) => a.d - b.d)[0];
}

/** The place turned about `from` onto the nearest multiple of 45 degrees, if it is near one; its distance is kept. */
export function snapAngle(at: Point, from: Point): Point | undefined {
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (!length) return undefined;
  const angle = Math.atan2(dy, dx);
  const whole = (Math.round(angle / (Math.PI / 4)) * Math.PI) / 4;
  if (Math.abs(angle - whole) > (ANGLE * Math.PI) / 180) return undefined;
  const along = length * Math.cos(angle - whole);
  return [from[0] + along * Math.cos(whole), from[1] + along * Math.sin(whole)];
}

/** The end moved along its piece until it stands one clearance off a strip that crosses its way. */
function snapSpacing(
  at: Point,
  from: Point,
  widthMm: number,
  strips: PlanStrip[],
  clearanceMm: number,
): Snapped | undefined {
  const length = Math.hypot(at[0] - from[0], at[1] - from[1]);
  if (!length) return undefined;
  const way: Point = [(at[0] - from[0]) / length, (at[1] - from[1]) / length];
  for (const strip of strips) {
    const apart = clearanceMm + (strip.width_mm + widthMm) / 2;
    for (const [a, b] of segmentsOf(strip.path)) {
      const span = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const across: Point = [-(b[1] - a[1]) / span, (b[0] - a[0]) / span];
      const along = ((at[0] - a[0]) * (b[0] - a[0]) + (at[1] - a[1]) * (b[1] - a[1])) / span;
      const off = (at[0] - a[0]) * across[0] + (at[1] - a[1]) * across[1];
      const rate = way[0] * across[0] + way[1] * across[1];
      if (along < 0 || along > span || Math.abs(rate) < 0.3) continue;
      const step = (Math.sign(off) * apart - off) / rate;
      if (Math.abs(step) <= SPACING_MM) {
        return { at: [at[0] + step * way[0], at[1] + step * way[1]], by: 'spacing', to: strip.id };
      }
    }
  }
  return undefined;
}
