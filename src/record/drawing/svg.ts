import type { Point } from '../../geometry/index.ts';
import { escapeText } from '../escape.ts';
import { inks } from './inks.ts';
import type { Drawing, EncodedImage, Shape } from './types.ts';

const round = (value: number) => Number(value.toFixed(3));

/** Pictures that the page holds once, by the id under which a drawing may use them. */
export type SharedImages = ReadonlyMap<EncodedImage, string>;

/**
 * A drawing as SVG text.
 * @param size 'mm' writes true size (width and height in mm); 'fit' leaves the size to the page.
 * @param shared pictures defined elsewhere in the same page, so that ten cut-outs do not carry the photograph ten times
 */
export function svgOf(drawing: Drawing, size: 'mm' | 'fit', shared: SharedImages = new Map()): string {
  const { x0, y0, x1, y1 } = drawing.box;
  const [width, height] = [round(x1 - x0), round(y1 - y0)];
  const mm = size === 'mm' ? ` width="${width}mm" height="${height}mm"` : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg"${mm} viewBox="${round(x0)} ${round(y0)} ${width} ${height}" role="img"` +
      ` font-family="system-ui, 'Segoe UI', 'Liberation Sans', Arial, sans-serif">`,
    `<title>${escapeText(drawing.title)}</title>`,
    ...drawing.shapes.map((shape) => svgShape(shape, shared)),
    '</svg>',
  ].join('\n');
}

function svgShape(shape: Shape, shared: SharedImages): string {
  switch (shape.kind) {
    case 'path':
      return `<path d="${shape.lines.map((line) => pathData(line, shape.closed)).join('')}" ${paint(shape)}/>`;
    case 'circle':
      return `<circle cx="${round(shape.at[0])}" cy="${round(shape.at[1])}" r="${round(shape.radius)}" ${paint(shape)}/>`;
    case 'text':
      return (
        `<text x="${round(shape.at[0])}" y="${round(shape.at[1])}" font-size="${round(shape.size)}"` +
        ` text-anchor="${shape.anchor ?? 'start'}" fill="${inks[shape.ink ?? 'graphite']}"` +
        `${shape.bold ? ' font-weight="600"' : ''}>${escapeText(shape.text)}</text>`
      );
    case 'image':
      return svgImage(shape, shared);
  }
}

function svgImage({ box, image, crop }: Extract<Shape, { kind: 'image' }>, shared: SharedImages): string {
  const id = shared.get(image);
  const view = crop ?? { x0: 0, y0: 0, x1: image.width, y1: image.height };
  return (
    `<svg x="${round(box.x0)}" y="${round(box.y0)}" width="${round(box.x1 - box.x0)}" height="${round(box.y1 - box.y0)}"` +
    ` viewBox="${round(view.x0)} ${round(view.y0)} ${round(view.x1 - view.x0)} ${round(view.y1 - view.y0)}" preserveAspectRatio="none">` +
    (id ? `<use href="#${id}"/>` : imageElement(image)) +
    '</svg>'
  );
}

/** The picture itself, in its own pixels. */
export function imageElement(image: EncodedImage, id?: string): string {
  const name = id ? ` id="${id}"` : '';
  const href = `data:${image.media};base64,${image.base64}`;
  return `<image${name} href="${href}" width="${image.width}" height="${image.height}" preserveAspectRatio="none"/>`;
}

function pathData(line: readonly Point[], closed = false): string {
  const places = line.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`);
  return places.join('') + (closed ? 'Z' : '');
}

function paint(shape: Extract<Shape, { kind: 'path' | 'circle' }>): string {
  const parts = [`fill="${shape.fill ? inks[shape.fill] : 'none'}"`];
  if (shape.fill && shape.kind === 'path') parts.push('fill-rule="evenodd"');
  if (shape.stroke) parts.push(`stroke="${inks[shape.stroke]}"`, `stroke-width="${shape.width ?? 0.3}"`);
  if (shape.stroke) parts.push('stroke-linejoin="round" stroke-linecap="round"');
  if (shape.dash) parts.push(`stroke-dasharray="${shape.dash.join(' ')}"`);
  if (shape.opacity !== undefined) parts.push(`opacity="${shape.opacity}"`);
  return parts.join(' ');
}
