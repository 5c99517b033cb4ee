import type { Point, Ring } from '../../geometry/index.ts';
import { segmentsOf } from '../strip/ribbon.ts';
import { besideLamp } from './besideLamp.ts';
import type { DrawnStrip, Template } from './types.ts';

type Pdf = PDFKit.PDFDocument;

const INK = '#1c1a17';
const FAINT = '#8d867b';
/** Printed strips are a pale cold grey: what is printed must not pass for copper in a photograph of the base. */
const STRIP = '#e3e9ee';
const STRIP_RIM = '#5f7080';
const CROSS_MM = 3;
const CROSS_OFF_MM = 4;
/** Points to mm: text is set in points inside a frame of millimetres. */
const PT = 25.4 / 72;

/** Draws a template in a frame whose unit is the millimetre and whose origin is the sheet's own. */
export function drawTemplate(pdf: Pdf, sheet: Template): void {
  for (const strip of sheet.strips) drawStrip(pdf, strip);
  for (const { outline, id } of sheet.patches) drawRing(pdf, outline, id, '#ffffff', 1.5);
  for (const { outline, label } of sheet.foam) drawRing(pdf, outline, label, '#eceae6', 0);
  for (const strip of sheet.strips) drawOrder(pdf, strip);
  if (sheet.cell) drawCell(pdf, sheet.cell);
  for (const lamp of sheet.lamps) drawLamp(pdf, lamp);
  for (const lamp of sheet.lamps) nameBeside(pdf, sheet, lamp);
  for (const contact of sheet.contacts) drawContact(pdf, contact);
  for (const hole of sheet.holes) drawHole(pdf, hole, sheet.mirrored);
  ring(pdf, sheet.outline).lineWidth(0.2).strokeColor(INK).stroke();
  for (const [a, b] of sheet.folds) dashed(pdf, a, b, [3, 1, 0.5, 1]);
  crosses(pdf, sheet);
  if (sheet.tag) writeTag(pdf, sheet, sheet.tag);
}

/** Tape as a broad line with a rim; fold marks across each corner. */
function drawStrip(pdf: Pdf, { path, widthMm }: DrawnStrip): void {
  for (const [width, colour] of [
    [widthMm, STRIP_RIM],
    [widthMm - 0.3, STRIP],
  ] as const) {
    pdf.moveTo(...path[0]);
    for (const place of path.slice(1)) pdf.lineTo(...place);
    pdf.lineWidth(width).lineCap('butt').lineJoin('miter').strokeColor(colour).stroke();
  }
  const segments = segmentsOf(path);
  for (let k = 1; k < segments.length; k++)
    foldMark(pdf, segments[k - 1][0], segments[k][0], segments[k][1], widthMm);
}

/** The crease of a folded corner lies along the line that halves its angle. */
function foldMark(pdf: Pdf, before: Point, at: Point, after: Point, widthMm: number): void {
  const a = unit(at, before);
  const b = unit(at, after);
  const [mx, my] = [a[0] + b[0], a[1] + b[1]];
  const length = Math.hypot(mx, my);
  if (length < 0.1) return;
  // The corner of a mitred strip lies half the width over the sine of half the angle from its centre-line's corner.
  const half = widthMm / 2 / Math.max(0.3, Math.sqrt(Math.max(0, (1 - (a[0] * b[0] + a[1] * b[1])) / 2)));
  const [ux, uy] = [(mx / length) * half, (my / length) * half];
  dashed(pdf, [at[0] - ux, at[1] - uy], [at[0] + ux, at[1] + uy], [0.8, 0.6]);
}

const unit = (from: Point, to: Point): Point => {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
};

/** The order of laying, in a circle at the middle of the longest piece. */
function drawOrder(pdf: Pdf, { path, order, widthMm }: DrawnStrip): void {
  const longest = segmentsOf(path).sort(
    ([a, b], [c, d]) => Math.hypot(d[0] - c[0], d[1] - c[1]) - Math.hypot(b[0] - a[0], b[1] - a[1]),
  )[0];
  const at: Point = [(longest[0][0] + longest[1][0]) / 2, (longest[0][1] + longest[1][1]) / 2];
  const radius = Math.max(1.3, Math.min(2, widthMm / 2 - 0.2));
  pdf.circle(at[0], at[1], radius).lineWidth(0.15).fillAndStroke('#ffffff', INK);
  centred(pdf, `${order}`, at, radius * 1.35);
}

function drawLamp(pdf: Pdf, { plus, minus }: Template['lamps'][number]): void {
  const out = unit(minus, plus);
  const side: Point = [-out[1] * 1.6, out[0] * 1.6];
  const corners: Ring = [
    [plus[0] + side[0], plus[1] + side[1]],
    [plus[0] - side[0], plus[1] - side[1]],
    [minus[0] - side[0], minus[1] - side[1]],
    [minus[0] + side[0], minus[1] + side[1]],
  ];
  ring(pdf, corners).fill('#ffffff');
  for (const [end, inward] of [
    [plus, -1],
    [minus, 1],
  ] as const)
    bracket(pdf, end, side, [inward * out[0], inward * out[1]]);
  sign(pdf, plus, true);
  sign(pdf, minus, false);
}

/** The name, and the + again, where the lamp will not hide them, large enough to be read off a photograph. */
function nameBeside(pdf: Pdf, sheet: Template, lamp: Template['lamps'][number]): void {
  const { name, plus } = besideLamp(sheet, lamp);
  pdf.font('Bold').fontSize(READ_MM).fillColor(INK);
  pdf.text(lamp.id, name[0] - pdf.widthOfString(lamp.id) / 2, name[1] - READ_MM * 0.62, { lineBreak: false });
  if (plus) sign(pdf, plus, true, 1);
}

/** An end of a lamp's outline. Its long sides stay open: a line from pad to pad could pass for copper between them. */
function bracket(pdf: Pdf, [x, y]: Point, [sx, sy]: Point, [ix, iy]: Point): void {
  pdf.moveTo(x + sx + ix, y + sy + iy).lineTo(x + sx, y + sy);
  pdf.lineTo(x - sx, y - sy).lineTo(x - sx + ix, y - sy + iy);
  pdf.lineWidth(0.2).strokeColor(STRIP_RIM).stroke();
}

function drawCell(pdf: Pdf, { at, diameterMm, up }: NonNullable<Template['cell']>): void {
  pdf
    .circle(at[0], at[1], diameterMm / 2)
    .lineWidth(0.25)
    .strokeColor(INK)
    .stroke();
  sign(pdf, at, up === '+', 2.2);
}

function drawContact(pdf: Pdf, { id, at }: Template['contacts'][number]): void {
  pdf.circle(at[0], at[1], 1.2).lineWidth(0.2).dash(0.5, { space: 0.4 }).strokeColor(INK).stroke().undash();
  centred(pdf, id, [at[0] + 3, at[1]], 1.6);
}

/** The hole itself, a cross through its centre to aim by, and its name beside it. */
function drawHole(pdf: Pdf, { id, at, diameterMm }: Template['holes'][number], mirrored: boolean): void {
  const reach = diameterMm / 2 + 1.5;
  pdf.moveTo(at[0] - reach, at[1]).lineTo(at[0] + reach, at[1]);
  pdf.moveTo(at[0], at[1] - reach).lineTo(at[0], at[1] + reach);
  pdf.lineWidth(0.1).strokeColor(FAINT).stroke();
  pdf
    .circle(at[0], at[1], diameterMm / 2)
    .lineWidth(0.15)
    .strokeColor(INK)
    .stroke();
  pdf.save();
  // The frame is mirrored, the letters are not.
  if (mirrored) pdf.translate(2 * at[0], 0).transform(-1, 0, 0, 1, 0, 0);
  centred(pdf, id, [at[0] + reach + 2, at[1] - 2], 1.9);
  pdf.restore();
}

/** + or - as strokes: they stay when a font is changed, and look the same mirrored. */
function sign(pdf: Pdf, [x, y]: Point, plus: boolean, reach = 0.8): void {
  pdf.moveTo(x - reach, y).lineTo(x + reach, y);
  if (plus) pdf.moveTo(x, y - reach).lineTo(x, y + reach);
  pdf
    .lineWidth(Math.max(0.25, reach / 4))
    .strokeColor(INK)
    .stroke();
}

function ring(pdf: Pdf, places: Ring): Pdf {
  pdf.moveTo(...places[0]);
  for (const place of places.slice(1)) pdf.lineTo(...place);
  return pdf.closePath();
}

function drawRing(pdf: Pdf, outline: Ring, label: string, fill: string, dash: number): void {
  ring(pdf, outline).fillOpacity(0.7).fill(fill).fillOpacity(1);
  ring(pdf, outline).lineWidth(0.2).strokeColor(INK);
  if (dash) pdf.dash(dash, { space: 0.8 });
  pdf.stroke().undash();
  const middle: Point = [
    outline.reduce((sum, [x]) => sum + x, 0) / outline.length,
    outline.reduce((sum, [, y]) => sum + y, 0) / outline.length,
  ];
  centred(pdf, label, middle, 2.2);
}

function dashed(pdf: Pdf, a: Point, b: Point, pattern: number[]): void {
  pdf.moveTo(...a).lineTo(...b);
  pdf.lineWidth(0.2).dash(pattern[0], { space: pattern[1] }).strokeColor(INK).stroke().undash();
}

/** Registration crosses outside the sheet's four corners. */
function crosses(pdf: Pdf, { origin: [x, y], width, height }: Template): void {
  for (const [cx, cy] of crossPlaces(x, y, width, height)) {
    pdf.moveTo(cx - CROSS_MM, cy).lineTo(cx + CROSS_MM, cy);
    pdf.moveTo(cx, cy - CROSS_MM).lineTo(cx, cy + CROSS_MM);
    pdf.lineWidth(0.1).strokeColor(INK).stroke();
  }
}

export function crossPlaces(x: number, y: number, width: number, height: number): Point[] {
  const off = CROSS_OFF_MM;
  return [
    [x - off, y - off],
    [x + width + off, y - off],
    [x + width + off, y + height + off],
    [x - off, y + height + off],
  ];
}

/** Small text with its middle at a place; height of the digits about 0.7 of the size. */
function centred(pdf: Pdf, text: string, [x, y]: Point, sizeMm: number): void {
  pdf.font('Regular').fontSize(sizeMm).fillColor(INK);
  pdf.text(text, x - pdf.widthOfString(text) / 2, y - sizeMm * 0.62, { lineBreak: false });
}

/** The tag along the lower edge, inside the rim where no tape lies, large enough to be read off a photograph. */
function writeTag(pdf: Pdf, { origin: [x, y], height }: Template, tag: string): void {
  pdf.font('Bold').fontSize(READ_MM).fillColor(INK);
  pdf.text(tag, x + 3, y + height - READ_MM * 1.3, { lineBreak: false });
}

/** Size of what is read off a photograph: capitals come out some 2 mm tall. */
const READ_MM = 8 * PT;
