import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Colour } from './colourOn.ts';

/** Number of quarter turns, clockwise, that the base's frame can take against the corners as found. */
export type Turn = 0 | 1 | 2 | 3;

/** Mean colour round a place of the sheet as found, mm; undefined off the picture. */
export type ColourAt = (at: Point) => Colour | undefined;

/** A strip differs from the sheet on both its sides by so many levels at least. */
const leastLevels = 12;
/** And by so many times what its two sides differ from each other. */
const aboveSides = 1.2;

/** Turns that keep the base's width and height: all four for a square, else the half turn. */
export function turnsOf(base: Card['base']): Turn[] {
  return Math.abs(base.width_mm - base.height_mm) < 0.02 * base.width_mm ? [0, 1, 2, 3] : [0, 2];
}

/** Whether the card says anything that can tell top from bottom. */
export function tellsTurn(card: Card): boolean {
  return (card.plan?.strips.length ?? 0) > 0 || card.lamps.length > 0;
}

/** The turn under which the card's plan and lamps lie best on what is seen, and how far it is ahead of the next. */
export function bestTurn(card: Card, colourAt: ColourAt): { turn: Turn; lead: number } {
  const fits = turnsOf(card.base).map((turn) => ({ turn, fit: fitOf(turn, card, colourAt) }));
  const [best, next] = fits.sort((a, b) => b.fit - a.fit);
  return { turn: best.turn, lead: best.fit - next.fit };
}

/** Share of the places along planned strips, and across lamps, that stand out against both their sides. */
function fitOf(turn: Turn, card: Card, colourAt: ColourAt): number {
  let out = 0;
  let all = 0;
  for (const [middle, left, right] of places(card)) {
    const at = (p: Point) => colourAt(placeBefore(turn, p, card.base));
    const [m, l, r] = [at(middle), at(left), at(right)];
    all++;
    if (m && l && r && standsOut(m, l, r)) out++;
  }
  return all === 0 ? 0 : out / all;
}

function standsOut(middle: Colour, left: Colour, right: Colour): boolean {
  const nearer = Math.min(difference(middle, left), difference(middle, right));
  return nearer > Math.max(leastLevels, aboveSides * difference(left, right));
}

function difference(a: Colour, b: Colour): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

type Across = readonly [middle: Point, left: Point, right: Point];

/** Places every 2 mm along the planned strips with the places beside them; the ends of the lamps likewise. */
function* places(card: Card): Generator<Across> {
  for (const { path, width_mm } of card.plan?.strips ?? []) {
    for (let i = 0; i + 1 < path.length; i++) yield* along(path[i], path[i + 1], width_mm / 2 + 1.5);
  }
  for (const { plus, minus } of card.lamps) {
    const [dx, dy] = [minus[0] - plus[0], minus[1] - plus[1]];
    yield* along([plus[0] - dx / 2, plus[1] - dy / 2], plus, lampAside);
    yield* along(minus, [minus[0] + dx / 2, minus[1] + dy / 2], lampAside);
  }
}

/** Beside a strip of usual width under a lamp's end, mm. */
const lampAside = 4.5;

function* along(a: Point, b: Point, aside: number): Generator<Across> {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  for (let s = 1; s < length; s += 2) {
    const [x, y] = [a[0] + s * ux, a[1] + s * uy];
    yield [
      [x, y],
      [x - aside * uy, y + aside * ux],
      [x + aside * uy, y - aside * ux],
    ];
  }
}

/** A place of the card's frame, in the frame of the sheet as found, before it is turned. */
function placeBefore(turn: Turn, [x, y]: Point, base: Card['base']): Point {
  const { width_mm: w, height_mm: h } = base;
  if (turn === 1) return [w - y, x];
  if (turn === 2) return [w - x, h - y];
  if (turn === 3) return [y, h - x];
  return [x, y];
}
