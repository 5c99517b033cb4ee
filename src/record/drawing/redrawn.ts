import type { Card, Contact } from '../../card/index.ts';
import type { Box, Point } from '../../geometry/index.ts';
import { cellTable } from '../../power/index.ts';
import { printBarMm, shortLength, unit } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Recordable } from '../types.ts';
import { sheetBox } from './markedSheet.ts';
import type { Drawing, Shape } from './types.ts';

const aroundMm = 3;
const footMm = 11;

/** The circuit as found, redrawn to scale: copper, lamps, cell, contacts, patches, flaps, and a bar to measure by. */
export function redrawn(checked: Recordable, card: Card): Drawing {
  const box = sheetBox(checked);
  return {
    title: words.figure.redrawn,
    box: { x0: box.x0 - aroundMm, y0: box.y0 - aroundMm, x1: box.x1 + aroundMm, y1: box.y1 + footMm },
    shapes: circuitShapes(checked, card),
  };
}

/** Shapes of the redrawn circuit in the base's frame, and the bar below it. */
export function circuitShapes(checked: Recordable, card: Card): Shape[] {
  const box = sheetBox(checked);
  const { width, height } = checked.sheet.baseMm;
  return [
    ring(rectangle({ x0: 0, y0: 0, x1: width, y1: height }), {
      fill: 'paper',
      stroke: 'graphite',
      width: 0.25,
    }),
    ...card.flaps.flatMap(({ outline, fold }) => [
      ring(outline, { fill: 'paper', stroke: 'grey', width: 0.2 }),
      line(fold, { dash: [2, 1] }),
    ]),
    ...checked.traced.pieces.map(({ outline }): Shape => {
      const lines = [outline.outer, ...outline.holes];
      return { kind: 'path', lines, closed: true, fill: 'foil', stroke: 'copper', width: 0.15 };
    }),
    ...card.patches.map(({ outline }) => ring(outline, { stroke: 'grey', width: 0.25, dash: [1, 0.8] })),
    ...cellShapes(card),
    ...card.contacts.flatMap(contactShapes),
    ...card.lamps.flatMap(lampShapes),
    ...scaleBar(box),
  ];
}

function lampShapes({ id, plus, minus }: Card['lamps'][number]): Shape[] {
  const [x, y]: Point = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
  const reach = Math.hypot(plus[0] - minus[0], plus[1] - minus[1]) || 1;
  const [ux, uy]: Point = [(plus[0] - minus[0]) / reach, (plus[1] - minus[1]) / reach];
  // The name stands across the legs, on the side with room for it.
  const name: Point = Math.abs(ux) > Math.abs(uy) ? [x, y - 3.2] : [x + 3, y + 1];
  return [
    { kind: 'path', lines: [[plus, minus]], stroke: 'graphite', width: 0.5 },
    { kind: 'circle', at: [x, y], radius: 2.2, fill: 'lamp', stroke: 'graphite', width: 0.35 },
    { kind: 'circle', at: minus, radius: 0.55, fill: 'graphite' },
    ...plusMark([plus[0] - uy * 1.9, plus[1] + ux * 1.9]),
    { kind: 'circle', at: plus, radius: 0.55, fill: 'paper', stroke: 'graphite', width: 0.3 },
    {
      kind: 'text',
      at: name,
      text: id,
      size: 2.8,
      bold: true,
      anchor: Math.abs(ux) > Math.abs(uy) ? 'middle' : 'start',
    },
  ];
}

function plusMark([x, y]: Point): Shape[] {
  const lines: Point[][] = [
    [
      [x - 0.9, y],
      [x + 0.9, y],
    ],
    [
      [x, y - 0.9],
      [x, y + 0.9],
    ],
  ];
  return [{ kind: 'path', lines, stroke: 'graphite', width: 0.4 }];
}

function cellShapes({ cell }: Card): Shape[] {
  if (!cell) return [];
  const radius = cellTable[cell.kind].diameterMm / 2;
  return [
    { kind: 'circle', at: cell.at, radius, fill: 'paper', opacity: 0.65 },
    { kind: 'circle', at: cell.at, radius, stroke: 'graphite', width: 0.35 },
    {
      kind: 'text',
      at: [cell.at[0], cell.at[1] + 0.5],
      text: cell.kind,
      size: 3,
      anchor: 'middle',
      bold: true,
    },
    {
      kind: 'text',
      at: [cell.at[0], cell.at[1] + 4.5],
      text: words.redrawn.up(cell.up),
      size: 2.5,
      anchor: 'middle',
    },
  ];
}

function contactShapes({ id, at, reach_mm: reach }: Contact): Shape[] {
  const places = typeof at[0] === 'number' ? [at as Point] : (at as [Point, Point]);
  const radius = places.length === 1 ? Math.min(reach, 4) : 1.6;
  const first = places[0] as Point;
  return [
    ...places.map((place): Shape => ({
      kind: 'circle',
      at: place,
      radius,
      stroke: 'graphite',
      width: 0.3,
      dash: [0.9, 0.7],
    })),
    { kind: 'text', at: [first[0], first[1] - radius - 0.8], text: id, size: 2.6, anchor: 'middle' },
  ];
}

/** A bar of 50 mm or 2 inches in five or four parts, so that a print can be measured. */
function scaleBar({ x0, y1 }: Box): Shape[] {
  const y = y1 + 4;
  const long = printBarMm();
  const parts = unit() === 'mm' ? 5 : 4;
  const ticks = Array.from({ length: parts + 1 }, (_, i): Point[] => [
    [x0 + (i * long) / parts, y - (i % parts === 0 ? 1.4 : 0.8)],
    [x0 + (i * long) / parts, y],
  ]);
  const bar: Point[] = [
    [x0, y],
    [x0 + long, y],
  ];
  return [
    { kind: 'path', lines: [bar, ...ticks], stroke: 'graphite', width: 0.25 },
    { kind: 'text', at: [x0, y + 4], text: words.redrawn.bar(shortLength(long)), size: 2.8 },
  ];
}

function rectangle({ x0, y0, x1, y1 }: Box): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

type Paint = Omit<Extract<Shape, { kind: 'path' }>, 'kind' | 'lines' | 'closed'>;

function ring(points: readonly Point[], paint: Paint): Shape {
  return { kind: 'path', lines: [points], closed: true, ...paint };
}

function line(points: readonly Point[], paint: Paint): Shape {
  return { kind: 'path', lines: [points], stroke: 'grey', width: 0.25, ...paint };
}
