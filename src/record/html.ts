import { recordWords as words } from '../words/record.ts';
import type { Block, RecordDocument } from './document/types.ts';
import { imageElement, svgOf, type SharedImages } from './drawing/svg.ts';
import type { Drawing, EncodedImage } from './drawing/types.ts';
import { escapeText } from './escape.ts';
import { htmlStyle } from './htmlStyle.ts';

type BlockOf<K extends Block['kind']> = Extract<Block, { kind: K }>;

/** Nothing may load or run: the page is shut by its own policy, pictures come as data. */
const policy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

/** Sets a record document as HTML. */
export function htmlOf({ title, language, blocks }: RecordDocument): string {
  const shared = sharedImages(blocks);
  return [
    `<!doctype html>\n<html lang="${escapeText(language)}">\n<head>\n<meta charset="utf-8">`,
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(title)}</title>\n<style>${htmlStyle}</style>\n</head>\n<body>\n${definitions(shared)}<main>`,
    ...blocks.map((block) => blockHtml(block, shared)),
    '</main>\n</body>\n</html>\n',
  ].join('\n');
}

function sharedImages(blocks: Block[]): SharedImages {
  const drawings = blocks.flatMap((block): Drawing[] => {
    if (block.kind === 'figure') return [block.drawing];
    return block.kind === 'finding' && block.cutOut ? [block.cutOut] : [];
  });
  const images = drawings.flatMap(({ shapes }) =>
    shapes.flatMap((s) => (s.kind === 'image' ? [s.image] : [])),
  );
  return new Map([...new Set<EncodedImage>(images)].map((image, i) => [image, `picture-${i + 1}`]));
}

function definitions(shared: SharedImages): string {
  if (shared.size === 0) return '';
  const images = [...shared].map(([image, id]) => imageElement(image, id)).join('');
  return `<svg width="0" height="0" style="position:absolute" aria-hidden="true"><defs>${images}</defs></svg>`;
}

function blockHtml(block: Block, shared: SharedImages): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${escapeText(block.text)}</h${block.level}>`;
    case 'para':
      return `<p${block.small ? ' class="small"' : ''}>${escapeText(block.text)}</p>`;
    case 'verdict':
      return `<p class="verdict${block.hold ? ' hold' : ''}">${escapeText(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${escapeText(item)}</li>`).join('')}</ul>`;
    case 'table':
      return tableHtml(block);
    case 'figure':
      return figureHtml(block, shared);
    case 'finding':
      return findingHtml(block, shared);
    case 'cautions':
      return cautionsHtml(block);
  }
}

function tableHtml({ caption, head, rows, numeric }: BlockOf<'table'>): string {
  const mark = (i: number) => (numeric?.[i] ? ' class="n"' : '');
  const heads = head.map((text, i) => `<th scope="col"${mark(i)}>${escapeText(text)}</th>`).join('');
  const body = rows
    .map((row) => `<tr>${row.map((text, i) => `<td${mark(i)}>${escapeText(text)}</td>`).join('')}</tr>`)
    .join('\n');
  return (
    `<div class="scroll" tabindex="0" role="region" aria-label="${escapeText(caption)}"><table><caption>${escapeText(caption)}</caption>` +
    `<thead><tr>${heads}</tr></thead><tbody>${body}</tbody></table></div>`
  );
}

function figureHtml({ drawing, caption, widthMm }: BlockOf<'figure'>, shared: SharedImages): string {
  const size = widthMm ? ` style="max-width:${widthMm}mm"` : '';
  return `<figure${size}>${svgOf(drawing, 'fit', shared)}<figcaption>${escapeText(caption)}</figcaption></figure>`;
}

function findingHtml(block: BlockOf<'finding'>, shared: SharedImages): string {
  const { number, title, say, todo, settle, settled, cutOut } = block;
  const line = (term: string, text: string) =>
    text ? `<dt>${escapeText(term)}</dt><dd>${escapeText(text)}</dd>` : '';
  return (
    `<section class="finding"><div class="number">${number}</div><div><h3>${escapeText(title)}</h3><p>${escapeText(say)}</p>` +
    `<dl>${line(words.toDo, todo)}${line(words.toSettle, settle)}</dl>` +
    `${settled ? `<p><strong>${escapeText(settled)}</strong></p>` : ''}</div>${cutOut ? svgOf(cutOut, 'fit', shared) : ''}</section>`
  );
}

function cautionsHtml({ items }: BlockOf<'cautions'>): string {
  const each = items.map(({ title, text }) => `<h3>${escapeText(title)}</h3><p>${escapeText(text)}</p>`);
  return `<div class="cautions">${each.join('')}</div>`;
}
