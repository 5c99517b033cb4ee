import type { Box, Point } from '../../geometry/index.ts';
import { holds } from '../../net/index.ts';
import { recordWords } from '../../words/record.ts';
import type { Recordable } from '../types.ts';
import { marginMm, placeMarks, type Mark } from './placeMarks.ts';
import type { Drawing, EncodedImage, Shape } from './types.ts';

/** The whole squared picture's box in the base's frame, mm. */
export function sheetBox({ sheet }: Recordable): Box {
  const [x0, y0] = sheet.originMm;
  return { x0, y0, x1: x0 + sheet.width / sheet.pxPerMm, y1: y0 + sheet.height / sheet.pxPerMm };
}

/** The squared photograph with its numbered proof marks in the margins. */
export function markedSheet(checked: Recordable, squared: EncodedImage | undefined): Drawing {
  const box = sheetBox(checked);
  const marks = placeMarks(checked.netlist.findings, box);
  const picture: Shape[] = squared ? [{ kind: 'image', box, image: squared }] : [];
  return {
    title: recordWords.figure.sheet(marks.length),
    box: { x0: box.x0 - marginMm, y0: box.y0 - 1, x1: box.x1 + marginMm, y1: box.y1 + 1 },
    shapes: [...picture, frame(box), ...marks.flatMap(markShapes)],
  };
}

function frame({ x0, y0, x1, y1 }: Box): Shape {
  const corners: Point[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return { kind: 'path', lines: [corners], closed: true, stroke: 'graphite', width: 0.2 };
}

/** Shape tells the weight, so that no one needs the colour: filled holds (from a certainty of 0.5 on), ringed asks for a check, dashed is a note. */
export function markShapes(mark: Mark): Shape[] {
  const { number, finding, at, label, radius } = mark;
  const filled = holds({ weight: finding.weight, certainty: finding.certainty });
  const place: Shape[] = [
    { kind: 'circle', at, radius: 1.6, stroke: 'paper', width: 0.9, opacity: 0.75 },
    { kind: 'circle', at, radius: 1.6, stroke: 'copper', width: 0.4 },
  ];
  if (!label) return [...place, numeral(number, [at[0], at[1] - 2], 2.2, 'copper')];
  return [
    ...leader(at, label, radius),
    ...place,
    {
      kind: 'circle',
      at: label,
      radius,
      fill: filled ? 'copper' : 'paper',
      stroke: 'copper',
      width: 0.4,
      ...(finding.weight === 'note' ? { dash: [0.8, 0.6] as const } : {}),
    },
    numeral(number, [label[0], label[1] + radius * 0.42], radius * 1.2, filled ? 'paper' : 'copper'),
  ];
}

/** From the rim of the number to the rim of the place's ring, with a light edge that shows on dark copper. */
function leader(at: Point, label: Point, radius: number): Shape[] {
  const reach = Math.hypot(at[0] - label[0], at[1] - label[1]) || 1;
  const [ux, uy] = [(at[0] - label[0]) / reach, (at[1] - label[1]) / reach];
  const start: Point = [label[0] + ux * radius, label[1] + uy * radius];
  const end: Point = [at[0] - ux * 1.6, at[1] - uy * 1.6];
  return [
    { kind: 'path', lines: [[start, end]], stroke: 'paper', width: 0.9, opacity: 0.75 },
    { kind: 'path', lines: [[start, end]], stroke: 'copper', width: 0.35 },
  ];
}

function numeral(number: number, at: Point, size: number, ink: 'paper' | 'copper'): Shape {
  return { kind: 'text', at, text: String(number), size, anchor: 'middle', bold: true, ink };
}

/** A square cut-out of the photograph round a place, its ring in the middle. */
export function cutOut(
  checked: Recordable,
  squared: EncodedImage,
  at: Point,
  number: number,
  halfMm = 11,
): Drawing {
  const whole = sheetBox(checked);
  const box = { x0: at[0] - halfMm, y0: at[1] - halfMm, x1: at[0] + halfMm, y1: at[1] + halfMm };
  const seen = {
    x0: Math.max(box.x0, whole.x0),
    y0: Math.max(box.y0, whole.y0),
    x1: Math.min(box.x1, whole.x1),
    y1: Math.min(box.y1, whole.y1),
  };
  const picture: Shape[] =
    seen.x1 > seen.x0 && seen.y1 > seen.y0
      ? [{ kind: 'image', box: seen, image: squared, crop: toPixels(seen, whole, squared) }]
      : [];
  return {
    title: recordWords.figure.cutOut(number),
    box,
    shapes: [
      ...picture,
      { kind: 'circle', at, radius: 3, stroke: 'paper', width: 1, opacity: 0.75 },
      { kind: 'circle', at, radius: 3, stroke: 'copper', width: 0.45 },
    ],
  };
}

function toPixels(part: Box, whole: Box, image: EncodedImage): Box {
  const sx = image.width / (whole.x1 - whole.x0);
  const sy = image.height / (whole.y1 - whole.y0);
  return {
    x0: (part.x0 - whole.x0) * sx,
    y0: (part.y0 - whole.y0) * sy,
    x1: (part.x1 - whole.x0) * sx,
    y1: (part.y1 - whole.y0) * sy,
  };
}
