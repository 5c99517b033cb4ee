import type { Card } from '../card/index.ts';
import type { CopperMask } from '../copper/index.ts';
import type { Point } from '../geometry/index.ts';

/** Number of quarter turns, clockwise, that the base's frame can take against the corners as found. */
export type Turn = 0 | 1 | 2 | 3;

/** Turns that keep the base's width and height: all four for a square, else the half turn. */
export function turnsOf(base: Card['base']): Turn[] {
  return Math.abs(base.width_mm - base.height_mm) < 0.02 * base.width_mm ? [0, 1, 2, 3] : [0, 2];
}

/** Whether the card says anything that can tell top from bottom. */
export function tellsTurn(card: Card): boolean {
  return (card.plan?.strips.length ?? 0) > 0 || card.lamps.length > 0;
}

/** A place of the card's frame, in the frame of the sheet as squared before it is turned. */
export function placeBefore(turn: Turn, [x, y]: Point, base: Card['base']): Point {
  const { width_mm: w, height_mm: h } = base;
  if (turn === 1) return [w - y, x];
  if (turn === 2) return [w - x, h - y];
  if (turn === 3) return [y, h - x];
  return [x, y];
}

/**
 * How well the card's plan and lamps lie on the copper under a turn, -1..1: share of planned places that are copper,
 * less the share of places a strip's width beside them that are copper too.
 */
export function fitOf(turn: Turn, card: Card, mask: CopperMask): number {
  const isCopper = (p: Point) => copperAt(mask, placeBefore(turn, p, card.base));
  const on: boolean[] = [];
  const off: boolean[] = [];
  for (const strip of card.plan?.strips ?? []) {
    for (let i = 0; i + 1 < strip.path.length; i++) {
      sample(strip.path[i], strip.path[i + 1], strip.width_mm * 1.1, (middle, left, right) => {
        on.push(isCopper(middle));
        off.push(isCopper(left), isCopper(right));
      });
    }
  }
  for (const lamp of card.lamps) {
    const dx = (lamp.minus[0] - lamp.plus[0]) / 3;
    const dy = (lamp.minus[1] - lamp.plus[1]) / 3;
    on.push(
      isCopper([lamp.plus[0] - dx, lamp.plus[1] - dy]),
      isCopper([lamp.minus[0] + dx, lamp.minus[1] + dy]),
    );
  }
  return share(on) - share(off);
}

/** The turn that fits best, and how far it is ahead of the next. */
export function bestTurn(card: Card, mask: CopperMask): { turn: Turn; lead: number } {
  const fits = turnsOf(card.base).map((turn) => ({ turn, fit: fitOf(turn, card, mask) }));
  const [best, next] = fits.sort((a, b) => b.fit - a.fit);
  return { turn: best.turn, lead: best.fit - next.fit };
}

function copperAt(mask: CopperMask, [x, y]: Point): boolean {
  const i = Math.floor((x - mask.originMm[0]) * mask.pxPerMm);
  const j = Math.floor((y - mask.originMm[1]) * mask.pxPerMm);
  if (i < 0 || j < 0 || i >= mask.width || j >= mask.height) return false;
  return mask.filled[j * mask.width + i] === 1;
}

/** Calls back every 2 mm along a stretch with the place on it and the places beside it. */
function sample(a: Point, b: Point, aside: number, visit: (m: Point, l: Point, r: Point) => void): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return;
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  for (let s = 1; s < length; s += 2) {
    const [x, y] = [a[0] + s * ux, a[1] + s * uy];
    visit([x, y], [x - aside * uy, y + aside * ux], [x + aside * uy, y - aside * ux]);
  }
}

function share(of: boolean[]): number {
  return of.length === 0 ? 0 : of.filter(Boolean).length / of.length;
}
