import type { Card, Lamp } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Attached } from '../parts/index.ts';
import type { Crossing, Traced } from '../trace/index.ts';
import { distance } from './distance.ts';
import { covered } from './covered.ts';
import type { Opening } from './copperGraph.ts';

/** A crossing is taken as open from this probability of paper on. */
export const openFrom = 0.55;
/** A finger's breadth round a tap at a join, mm. */
const tapMm = 3;

/** Where copper that the mask shows as one is taken as parted: seen breaks, joins that were metered open, lamp bodies. */
export function openings(traced: Traced, attached: Attached, card: Card): Opening[] {
  return [...seenBreaks(traced, card), ...meteredOpen(traced, card), ...bodies(traced, attached, card)];
}

function seenBreaks(traced: Traced, card: Card): Opening[] {
  return openCrossings(traced, card).map((crossing) => ({
    piece: crossing.piece,
    at: crossing.at,
    ...acrossStrip(crossing),
  }));
}

/** Cuts that the mask runs over. */
export function openCrossings(traced: Traced, card: Card): Crossing[] {
  return traced.crossings
    .filter(({ other, gap, piece }) => other === undefined && gap >= openFrom && piece > 0)
    .filter(({ at }) => !covered(card, at))
    .filter(({ at }) => !card.joins.some((join) => join.conducts && distance(join.at, at) < tapMm));
}

/** All centre-lines within a cut, for a mask that shows it in part leads them round it. */
function acrossStrip({ at, along, stripMm = 0, widthMm }: Crossing): Pick<Opening, 'covers'> {
  if (!along) return {};
  const [ux, uy] = along;
  return {
    covers: ([x, y]) =>
      Math.abs((x - at[0]) * ux + (y - at[1]) * uy) < cutHalf(widthMm) &&
      Math.abs((y - at[1]) * ux - (x - at[0]) * uy) < stripMm / 2 + 0.3,
  };
}

/** Half of what a cut takes from the centre-lines, mm: a step of theirs at least. */
const cutHalf = (widthMm: number): number => Math.max(0.4, widthMm / 2 + 0.2);

/** Places on the strip on both sides of a cut, mm. */
export function sidesOf({ at, along, widthMm }: Crossing): [Point, Point] | undefined {
  if (!along) return undefined;
  const off = cutHalf(widthMm) + 0.5;
  return [
    [at[0] - off * along[0], at[1] - off * along[1]],
    [at[0] + off * along[0], at[1] + off * along[1]],
  ];
}

function meteredOpen(traced: Traced, card: Card): Opening[] {
  return card.joins
    .filter(({ conducts }) => !conducts)
    .flatMap(({ at }) => {
      const near = traced.crossings.find((c) => c.other === undefined && distance(c.at, at) < tapMm);
      return near && near.gap < openFrom ? [{ piece: near.piece, at: near.at }] : [];
    });
}

/**
 * Both pads of a lamp on one piece: where copper is seen to pass beside its body they truly are; where only what lies
 * between the pads looks like copper, that is the lamp itself, and the piece is parted beneath it.
 */
function bodies(traced: Traced, attached: Attached, card: Card): Opening[] {
  const pieceOf = new Map(attached.pads.map(({ pad, piece }) => [pad, piece]));
  return card.lamps.flatMap((lamp) => {
    const piece = pieceOf.get(`${lamp.id}+`);
    if (!piece || piece !== pieceOf.get(`${lamp.id}-`) || passesBeside(traced, piece, lamp)) return [];
    return [{ piece, at: middle(lamp), covers: bodyOf(lamp, -betweenPads, body.half) }];
  });
}

/** Copper is parted so far short of the pads, mm: a strip that a pad lies on runs on beneath it. */
const betweenPads = -0.5;

function middle({ plus, minus }: Lamp): Point {
  return [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
}

/** Half a body's width by its pads' distance: as most are, and the widest with the shade at its foot (common practice, no source). */
const body = { half: 0.65, most: 0.75 };

/**
 * A lamp's body: from pad to pad and `moreMm` over, as wide to both sides as its pads are apart times `wide`, 5.4 mm in all
 * at most (common practice, no source). What passes beside the largest is copper.
 */
function bodyOf(lamp: Lamp, moreMm: number, wide: number): (p: Point) => boolean {
  const { plus, minus } = lamp;
  const spacing = distance(plus, minus) || 1;
  const [ux, uy] = [(plus[0] - minus[0]) / spacing, (plus[1] - minus[1]) / spacing];
  const [mx, my] = middle(lamp);
  const half = Math.min(2.7, wide * spacing);
  return ([x, y]) =>
    Math.abs((x - mx) * ux + (y - my) * uy) < Math.max(0.6, spacing / 2 + moreMm) &&
    Math.abs((y - my) * ux - (x - mx) * uy) < half;
}

/** Whether copper near one pad reaches the other by a way beside the body, within a window round the lamp. */
function passesBeside(traced: Traced, piece: number, lamp: Lamp): boolean {
  const { labels, width, height, pxPerMm, originMm } = traced;
  const spacing = distance(lamp.plus, lamp.minus);
  const reach = spacing / 2 + 3;
  const [mx, my] = middle(lamp);
  const x0 = Math.max(0, Math.floor((mx - reach - originMm[0]) * pxPerMm));
  const y0 = Math.max(0, Math.floor((my - reach - originMm[1]) * pxPerMm));
  const w = Math.min(width - x0, Math.ceil(2 * reach * pxPerMm));
  const h = Math.min(height - y0, Math.ceil(2 * reach * pxPerMm));
  const inBody = bodyOf(lamp, 1, body.most);
  const nearPad = (p: Point, own: Point, other: Point) =>
    distance(p, own) < 2.4 && distance(p, own) < 0.6 * distance(p, other);
  const open = new Uint8Array(w * h);
  const queue: number[] = [];
  const goal = new Uint8Array(w * h);
  for (let j = 0; j < h; j++) {
    for (let i = 0; i < w; i++) {
      if (labels[(y0 + j) * width + x0 + i] !== piece) continue;
      const p: Point = [originMm[0] + (x0 + i + 0.5) / pxPerMm, originMm[1] + (y0 + j + 0.5) / pxPerMm];
      if (inBody(p)) continue;
      const k = j * w + i;
      open[k] = 1;
      if (nearPad(p, lamp.minus, lamp.plus)) goal[k] = 1;
      if (nearPad(p, lamp.plus, lamp.minus)) queue.push(k);
    }
  }
  for (const k of queue) open[k] = 0;
  for (let head = 0; head < queue.length; head++) {
    const k = queue[head];
    if (goal[k]) return true;
    const i = k % w;
    for (const n of [i > 0 ? k - 1 : -1, i < w - 1 ? k + 1 : -1, k - w, k + w]) {
      if (n < 0 || n >= open.length || !open[n]) continue;
      open[n] = 0;
      queue.push(n);
    }
  }
  return false;
}
