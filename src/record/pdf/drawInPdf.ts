import type { Box, Point } from '../../geometry/index.ts';
import { inks } from '../drawing/inks.ts';
import type { Drawing, EncodedImage, Shape } from '../drawing/types.ts';
import { fontNames, type Pdf } from './page.ts';

/** Draws a drawing as vectors with its top-left corner at (x, y). @param scale points per mm */
export function drawInPdf(pdf: Pdf, { box, shapes }: Drawing, x: number, y: number, scale: number): void {
  pdf.save();
  pdf.rect(x, y, (box.x1 - box.x0) * scale, (box.y1 - box.y0) * scale).clip();
  pdf.transform(scale, 0, 0, scale, x - box.x0 * scale, y - box.y0 * scale);
  for (const shape of shapes) drawShape(pdf, shape);
  pdf.restore();
}

function drawShape(pdf: Pdf, shape: Shape): void {
  switch (shape.kind) {
    case 'path':
      for (const line of shape.lines) follow(pdf, line, shape.closed ?? false);
      return paint(pdf, shape);
    case 'circle':
      pdf.circle(shape.at[0], shape.at[1], shape.radius);
      return paint(pdf, shape);
    case 'text':
      return drawText(pdf, shape);
    case 'image':
      return drawImage(pdf, shape.box, shape.image, shape.crop);
  }
}

function follow(pdf: Pdf, line: readonly Point[], closed: boolean): void {
  line.forEach(([x, y], i) => (i === 0 ? pdf.moveTo(x, y) : pdf.lineTo(x, y)));
  if (closed) pdf.closePath();
}

function paint(
  pdf: Pdf,
  { fill, stroke, width = 0.3, dash, opacity = 1 }: Extract<Shape, { kind: 'path' | 'circle' }>,
): void {
  pdf.save();
  pdf.opacity(opacity).lineWidth(width).lineJoin('round').lineCap('round');
  if (dash) pdf.dash(dash[0], { space: dash[1] });
  if (fill && stroke) pdf.fillAndStroke(inks[fill], inks[stroke], 'even-odd');
  else if (fill) pdf.fill(inks[fill], 'even-odd');
  else if (stroke) pdf.stroke(inks[stroke]);
  pdf.restore();
}

function drawText(
  pdf: Pdf,
  { at, text, size, anchor = 'start', bold, ink = 'graphite' }: Extract<Shape, { kind: 'text' }>,
): void {
  pdf
    .font(bold ? fontNames.bold : fontNames.regular)
    .fontSize(size)
    .fillColor(inks[ink]);
  const width = pdf.widthOfString(text);
  const shift = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
  pdf.text(text, at[0] - shift, at[1], { lineBreak: false, baseline: 'alphabetic' });
}

function drawImage(pdf: Pdf, box: Box, image: EncodedImage, crop?: Box): void {
  const [width, height] = [box.x1 - box.x0, box.y1 - box.y0];
  const view = crop ?? { x0: 0, y0: 0, x1: image.width, y1: image.height };
  const [sx, sy] = [width / (view.x1 - view.x0), height / (view.y1 - view.y0)];
  pdf.save();
  pdf.rect(box.x0, box.y0, width, height).clip();
  // The same text is the same picture to pdfkit, so it goes into the document once, however many cut-outs show it.
  pdf.image(`data:${image.media};base64,${image.base64}`, box.x0 - view.x0 * sx, box.y0 - view.y0 * sy, {
    width: image.width * sx,
    height: image.height * sy,
  });
  pdf.restore();
}
