import type { Card, Flap } from '../../card/index.ts';
import type { Point, Ring } from '../../geometry/index.ts';
import { cellTable } from '../../power/cellTable.ts';
import { shortLength } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { sheetTag } from './tag.ts';
import type { DrawnStrip, Template } from './types.ts';

/** Every sheet of a card that is printed at its true size, in the order of use. */
export function templatesOf(card: Card): Template[] {
  return [
    baseTemplate(card),
    ...card.flaps.map((flap) => flapTemplate(card, flap)),
    ...(holesOf(card).length ? [punchTemplate(card, false), punchTemplate(card, true)] : []),
    ...(card.plan?.foam.length ? [foamTemplate(card)] : []),
  ];
}

function blank(card: Card, title: string, note: string): Template {
  const { width_mm: width, height_mm: height } = card.base;
  return {
    title,
    note,
    origin: [0, 0],
    width,
    height,
    mirrored: false,
    outline: [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    folds: [],
    strips: [],
    lamps: [],
    contacts: [],
    patches: [],
    holes: [],
    foam: [],
  };
}

function baseTemplate(card: Card): Template {
  const sheet = blank(card, planWords.baseSheet, planWords.baseNote);
  return {
    ...sheet,
    folds: card.flaps.map(({ fold }) => fold),
    strips: stripsOf(card).filter(({ id }) => onBase(card, id)),
    lamps: lampsOf(card),
    ...(card.cell && {
      cell: { at: card.cell.at, diameterMm: cellTable[card.cell.kind].diameterMm, up: card.cell.up },
    }),
    contacts: card.contacts.flatMap(({ id, at }) =>
      (typeof at[0] === 'number' ? [at as Point] : (at as [Point, Point])).map((place) => ({
        id,
        at: place,
      })),
    ),
    patches: card.patches.map(({ id, outline }) => ({ id, outline })),
    tag: sheetTag(card),
  };
}

/** Strips of the plan in the order of laying. */
function stripsOf(card: Card): DrawnStrip[] {
  return (card.plan?.strips ?? []).map(({ id, net, path, width_mm }, k) => ({
    id,
    net,
    path,
    widthMm: width_mm,
    order: k + 1,
  }));
}

function onBase(card: Card, stripId: string): boolean {
  const on = card.plan?.strips.find(({ id }) => id === stripId)?.on ?? 'base';
  return !card.flaps.some(({ id }) => id === on);
}

const lampsOf = (card: Card) =>
  (card.plan?.lamps ?? card.lamps).map(({ id, plus, minus }) => ({ id, plus, minus }));

/**
 * A flap as its underside lands on the base: its copper, planned with the flap open, mirrored about the fold. The page
 * shows it through the closed flap from above, so it is the pattern to draw on the flap's upper side or to lay under it.
 */
function flapTemplate(card: Card, flap: Flap): Template {
  const closed = (p: Point) => mirroredAbout(p, flap.fold);
  const outline = flap.outline.map(closed);
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const origin: Point = [Math.min(...xs), Math.min(...ys)];
  const own = [
    ...flap.strips.map(({ id, path, width_mm }, k) => ({
      id,
      net: flap.id,
      path,
      widthMm: width_mm,
      order: k + 1,
    })),
    ...stripsOf(card).filter(({ id }) => card.plan?.strips.find((s) => s.id === id)?.on === flap.id),
  ];
  return {
    ...blank(card, planWords.flapSheet(flap.id), planWords.flapNote),
    origin,
    width: Math.max(...xs) - origin[0],
    height: Math.max(...ys) - origin[1],
    outline,
    folds: [flap.fold],
    strips: own.map((strip) => ({ ...strip, path: strip.path.map(closed) })),
  };
}

/** Mirror image about a line. */
export function mirroredAbout([x, y]: Point, [a, b]: readonly [Point, Point]): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy);
  return [2 * (a[0] + t * dx) - x, 2 * (a[1] + t * dy) - y];
}

/** The front's light holes, as planned or over the middle of each lamp. */
export function holesOf(card: Card): Template['holes'] {
  const holes = card.plan?.holes ?? [];
  if (holes.length) return holes.map(({ id, at, diameter_mm }) => ({ id, at, diameterMm: diameter_mm }));
  return lampsOf(card).map(({ id, plus, minus }) => ({
    id,
    at: [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2] as Point,
    diameterMm: LIGHT_HOLE_MM,
  }));
}

/** A sixteenth of an inch, the usual small punch (common practice). */
const LIGHT_HOLE_MM = 1.6;

function punchTemplate(card: Card, mirrored: boolean): Template {
  const [title, note] = mirrored
    ? [planWords.punchBack, planWords.punchBackNote]
    : [planWords.punchFront, planWords.punchFrontNote];
  return { ...blank(card, title, note), mirrored, holes: holesOf(card) };
}

function foamTemplate(card: Card): Template {
  const foam = (card.plan?.foam ?? []).map(({ outline, layers, layer_mm }) => ({
    outline: outline as Ring,
    label: planWords.foamLabel(layers, shortLength(layer_mm)),
  }));
  return { ...blank(card, planWords.foamSheet, planWords.foamNote), foam, lamps: lampsOf(card) };
}
