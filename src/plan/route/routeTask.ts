import type { Card, Contact } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { cellTable } from '../../power/cellTable.ts';
import type { Obstacle, RouteNet, RouteTask, Rule, Terminal } from './types.ts';

/** Length of the straight piece that leads to a lamp's pad or a contact's side. */
const LEAD_MM = 5;
/** Half the opening left at a contact. */
const HALF_OPENING_MM = 1.5;
/** Copper of the upper face's net keeps this far from the cell's rim. */
const CELL_ROOM_MM = 1.5;
const EDGE_ROOM_MM = 1;

const unit = (a: Point, b: Point): Point => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
};
const step = ([x, y]: Point, [dx, dy]: Point, by: number): Point => [x + by * dx, y + by * dy];

/**
 * What must be joined to what: a plus rail and a minus rail with the lamps between them; a lamp that a contact lights
 * has one side broken at that contact, so its piece from contact to lamp is a net of its own.
 * @param broken the side of the lamps at which the contacts break
 * @param upperSide which side of the cell meets its upper face, 0 the roomiest
 */
export function routeTask(
  card: Card,
  rule: Rule,
  broken: 'plus' | 'minus' = 'plus',
  upperSide = 0,
): RouteTask {
  const plus: RouteNet = { id: 'plus', terminals: [] };
  const minus: RouteNet = { id: 'minus', terminals: [] };
  const branches: RouteNet[] = [];
  const obstacles: Obstacle[] = [];
  if (card.cell) addCell(card, card.cell, plus, minus, obstacles, rule, upperSide);
  const rail = broken === 'plus' ? plus : minus;
  for (const contact of card.contacts) addContact(card, contact, broken, rail, branches);
  for (const lamp of card.lamps) {
    if (lamp.on !== 'base') continue;
    const out = unit(lamp.minus, lamp.plus);
    const contactId = typeof lamp.intent === 'object' ? lamp.intent.contact : undefined;
    const feeder = branches.find(({ id }) => id === contactId) ?? rail;
    const [onPlus, onMinus] = broken === 'plus' ? [feeder, minus] : [plus, feeder];
    onPlus.terminals.push({ pad: `${lamp.id}+`, at: lamp.plus, from: step(lamp.plus, out, LEAD_MM) });
    onMinus.terminals.push({ pad: `${lamp.id}-`, at: lamp.minus, from: step(lamp.minus, out, -LEAD_MM) });
    const inset = Math.min(1, Math.hypot(lamp.plus[0] - lamp.minus[0], lamp.plus[1] - lamp.minus[1]) / 3);
    obstacles.push({ a: step(lamp.plus, out, -inset), b: step(lamp.minus, out, inset), keepMm: 0.5 });
  }
  return {
    width: card.base.width_mm,
    height: card.base.height_mm,
    nets: [minus, plus, ...branches].filter(({ terminals }) => terminals.length > 1),
    obstacles,
    edgeMm: card.limits.edge_mm + EDGE_ROOM_MM,
  };
}

/** The lower face lies on its rail; the upper face is met beside the cell, at a flap's fold or at the given place. */
function addCell(
  card: Card,
  cell: NonNullable<Card['cell']>,
  plus: RouteNet,
  minus: RouteNet,
  obstacles: Obstacle[],
  rule: Rule,
  upperSide: number,
): void {
  const radius = cellTable[cell.kind].diameterMm / 2;
  const [upper, lower] = cell.up === '+' ? [plus, minus] : [minus, plus];
  const sign = (net: RouteNet) => (net === plus ? '+' : '-');
  lower.terminals.push({ pad: `cell${sign(lower)}`, at: cell.at, from: cell.at });
  upper.terminals.push(
    upperTerminal(card, cell, radius + CELL_ROOM_MM + rule.widthMm / 2, `cell${sign(upper)}`, upperSide),
  );
  obstacles.push({ a: cell.at, b: cell.at, keepMm: radius + CELL_ROOM_MM, except: [lower.id] });
}

function upperTerminal(
  card: Card,
  cell: NonNullable<Card['cell']>,
  apart: number,
  pad: string,
  upperSide: number,
): Terminal {
  if (cell.upper_contact) return { pad, at: cell.upper_contact, from: cell.upper_contact };
  const fold = card.flaps.find(({ use }) => use === 'cell')?.fold;
  if (fold) {
    const at: Point = [(fold[0][0] + fold[1][0]) / 2, (fold[0][1] + fold[1][1]) / 2];
    const inward = unit(at, [card.base.width_mm / 2, card.base.height_mm / 2]);
    const square: Point =
      Math.abs(inward[0]) > Math.abs(inward[1]) ? [Math.sign(inward[0]), 0] : [0, Math.sign(inward[1])];
    return { pad, at, from: step(at, square, 2 * LEAD_MM) };
  }
  const beside = freestSide(card, cell.at, apart + 1, upperSide);
  return { pad, at: beside, from: beside };
}

/** Of eight places round the cell, ordered by their room to edges and lamps, the one asked for; 0 is the roomiest. */
function freestSide(card: Card, at: Point, apart: number, side: number): Point {
  const busy = card.lamps.flatMap(({ plus, minus }) => [plus, minus]);
  const spots = Array.from({ length: 8 }, (_, k): Point => {
    const angle = (k * Math.PI) / 4;
    return [at[0] + apart * Math.cos(angle), at[1] + apart * Math.sin(angle)];
  });
  const roomAt = (p: Point) => {
    const edge = Math.min(p[0], p[1], card.base.width_mm - p[0], card.base.height_mm - p[1]);
    return Math.min(edge, ...busy.map((b) => Math.hypot(p[0] - b[0], p[1] - b[1]) - LEAD_MM));
  };
  return spots.sort((a, b) => roomAt(b) - roomAt(a))[side];
}

/** A contact's two sides: one on the broken rail, one on the branch of the lamps that it lights. */
function addContact(
  card: Card,
  contact: Contact,
  broken: 'plus' | 'minus',
  rail: RouteNet,
  branches: RouteNet[],
): void {
  const lamps = card.lamps.filter(
    ({ intent }) => typeof intent === 'object' && intent.contact === contact.id,
  );
  if (!lamps.length) return;
  const [a, b] = sidesOf(contact, lamps[0][broken]);
  rail.terminals.push({ pad: `${contact.id}a`, at: a, from: step(a, unit(b, a), LEAD_MM) });
  branches.push({
    id: contact.id,
    terminals: [{ pad: `${contact.id}b`, at: b, from: step(b, unit(a, b), LEAD_MM) }],
  });
}

/** Both sides as given, or about the one place, the branch's side looking to the lamp along the nearer axis. */
function sidesOf({ at }: Contact, lamp: Point): [Point, Point] {
  if (typeof at[0] !== 'number') return at as [Point, Point];
  const place = at as Point;
  const [dx, dy] = unit(place, lamp);
  const axis: Point = Math.abs(dx) > Math.abs(dy) ? [Math.sign(dx), 0] : [0, Math.sign(dy) || 1];
  return [step(place, axis, -HALF_OPENING_MM), step(place, axis, HALF_OPENING_MM)];
}
