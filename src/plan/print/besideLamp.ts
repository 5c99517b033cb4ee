import type { Point } from '../../geometry/index.ts';
import { distanceToRibbon, distanceToSegment } from '../strip/ribbon.ts';
import type { Template } from './types.ts';

type Lamp = Template['lamps'][number];

/** Half the width and height of a mark's box, mm. */
interface Half {
  x: number;
  y: number;
}

/** A letter of a name is about so wide, mm. */
const letterMm = 1.7;
const plusBox: Half = { x: 1, y: 1 };
/** Marks begin so far from a lamp's axis: its body and shadow end before, mm. */
const bodyMm = 3;
/** More free paper than this round a mark gains nothing, mm; with less than the least a + is left out. */
const room = { enough: 1.3, least: 0.25 };

/**
 * Where a lamp's name and its + are printed so that they stay readable with the lamp laid: beside it, where most paper
 * is free between strips, lamps, contacts and cell. No + where there is no room for one by its end.
 */
export function besideLamp(sheet: Template, lamp: Lamp): { name: Point; plus?: Point } {
  const { plus, minus } = lamp;
  const middle: Point = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
  const nameBox = { x: (lamp.id.length * letterMm) / 2, y: 1 };
  const free = (box: Half) => (at: Point) => freePaper(sheet, lamp, at, box);
  const name = freest(
    around(lamp, middle, nameBox, [0, 0.35, -0.35, 0.8, -0.8, 1.2, -1.2, 1.6, -1.6]),
    free(nameBox),
  );
  const offName = (at: Point) =>
    Math.max(
      Math.abs(at[0] - name[0]) - nameBox.x - plusBox.x,
      Math.abs(at[1] - name[1]) - nameBox.y - plusBox.y,
    );
  const clear = (at: Point) => Math.min(free(plusBox)(at), offName(at) - room.least);
  const beside = freest(around(lamp, plus, plusBox, [0, -0.2, 0.15]), clear);
  return clear(beside) < room.least ? { name } : { name, plus: beside };
}

/** Places for a box close by both sides of a lamp, along it by shares of its length, the wished first. */
function around({ plus, minus }: Lamp, from: Point, box: Half, along: number[]): Point[] {
  const [dx, dy] = [minus[0] - plus[0], minus[1] - plus[1]];
  const far = Math.hypot(dx, dy) || 1;
  const aside = bodyMm + (box.x * Math.abs(dy) + box.y * Math.abs(dx)) / far;
  return along.flatMap((share) =>
    [aside, -aside].map((to): Point => [
      from[0] + share * dx - (to * dy) / far,
      from[1] + share * dy + (to * dx) / far,
    ]),
  );
}

/** The first of the freest places. */
function freest(places: Point[], free: (at: Point) => number): Point {
  return places.reduce((best, place) => (free(place) > free(best) + 0.05 ? place : best));
}

/** Free paper round a box, mm, no more than enough. */
function freePaper(sheet: Template, own: Lamp, [x, y]: Point, box: Half): number {
  const rim = [-1, 0, 1].flatMap((i) => [-1, 1].map((j): Point => [x + i * box.x, y + j * box.y]));
  const gaps = rim.flatMap((at) => [
    at[0] - sheet.origin[0],
    sheet.origin[0] + sheet.width - at[0],
    at[1] - sheet.origin[1],
    sheet.origin[1] + sheet.height - at[1],
    ...sheet.strips.map((strip) => distanceToRibbon(at, strip)),
    ...sheet.lamps
      .filter((lamp) => lamp !== own)
      .map(({ plus, minus }) => distanceToSegment(at, [plus, minus]) - 2),
    ...sheet.contacts.map((contact) => Math.hypot(at[0] - contact.at[0], at[1] - contact.at[1]) - 1.5),
  ]);
  const { cell } = sheet;
  if (cell)
    gaps.push(...rim.map((at) => Math.hypot(at[0] - cell.at[0], at[1] - cell.at[1]) - cell.diameterMm / 2));
  return Math.min(room.enough, ...gaps);
}
