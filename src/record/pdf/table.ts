import type { Block } from '../document/types.ts';
import { inks } from '../drawing/inks.ts';
import { fontNames, group, room, tagged, type Setting, type Tag } from './page.ts';

type TableBlock = Extract<Block, { kind: 'table' }>;

const sizePt = 8.5;
const gapPt = 8;
const padPt = 2.5;

/** Sets a table; its head is set again on every page that it runs on to. */
export function setTable(setting: Setting, table: TableBlock): void {
  const { pdf, root, left, width } = setting;
  const widths = columnWidths(setting, table);
  room(setting, 60);
  const element = group(root, pdf, 'Table');
  tagged(element, pdf, 'Caption', () => {
    pdf
      .font(fontNames.regular)
      .fontSize(sizePt)
      .fillColor(inks.grey)
      .text(table.caption, left, pdf.y, { width });
  });
  pdf.y += 3;
  setRow(setting, element, table, table.head, widths, 'TH');
  for (const row of table.rows) {
    const height = rowHeight(setting, row, widths);
    if (pdf.y + height > pdf.page.height - pdf.page.margins.bottom) {
      pdf.addPage();
      repeatHead(setting, table, widths);
    }
    setRow(setting, element, table, row, widths, 'TD');
  }
  pdf.y += 10;
}

function setRow(
  setting: Setting,
  table: Tag,
  block: TableBlock,
  row: string[],
  widths: number[],
  tag: 'TH' | 'TD',
): void {
  const { pdf } = setting;
  const line = group(table, pdf, 'TR');
  const top = pdf.y;
  const height = rowHeight(setting, row, widths);
  row.forEach((text, i) =>
    tagged(line, pdf, tag, () => drawCell(setting, block, text, i, widths, top, tag === 'TH')),
  );
  rule(setting, top + height);
}

/** The head again, for the eye only: in the reading order it stands once. */
function repeatHead(setting: Setting, table: TableBlock, widths: number[]): void {
  const { pdf } = setting;
  const top = pdf.y;
  pdf.markContent('Artifact', { type: 'Layout' });
  table.head.forEach((text, i) => drawCell(setting, table, text, i, widths, top, true));
  pdf.endMarkedContent();
  rule(setting, top + rowHeight(setting, table.head, widths));
}

function drawCell(
  { pdf, left }: Setting,
  { numeric }: TableBlock,
  text: string,
  column: number,
  widths: number[],
  top: number,
  bold: boolean,
): void {
  const x = left + widths.slice(0, column).reduce((sum, width) => sum + width + gapPt, 0);
  pdf
    .font(bold ? fontNames.bold : fontNames.regular)
    .fontSize(sizePt)
    .fillColor(inks.graphite);
  const align = numeric?.[column] ? 'right' : 'left';
  pdf.text(text || ' ', x, top + padPt, { width: widths[column] ?? 0, align });
}

function rule({ pdf, left, width }: Setting, y: number): void {
  pdf.markContent('Artifact', { type: 'Layout' });
  pdf
    .moveTo(left, y)
    .lineTo(left + width, y)
    .lineWidth(0.4)
    .stroke(inks.faint);
  pdf.endMarkedContent();
  pdf.y = y;
}

function rowHeight({ pdf }: Setting, row: string[], widths: number[]): number {
  pdf.font(fontNames.bold).fontSize(sizePt);
  const heights = row.map((text, i) => pdf.heightOfString(text || ' ', { width: widths[i] ?? 10 }));
  return Math.max(...heights) + 2 * padPt;
}

/** Columns as wide as their widest cell; where that is too much, the wide ones give way. */
function columnWidths({ pdf, width }: Setting, { head, rows }: TableBlock): number[] {
  pdf.font(fontNames.bold).fontSize(sizePt);
  const wished = head.map((text, i) => {
    const cells = [text, ...rows.map((row) => row[i] ?? '')];
    return Math.max(...cells.map((cell) => pdf.widthOfString(cell))) + 1;
  });
  const free = width - gapPt * (head.length - 1);
  let limit = Math.max(...wished);
  const total = () => wished.reduce((sum, wish) => sum + Math.min(wish, limit), 0);
  while (total() > free && limit > 12) limit *= 0.97;
  return wished.map((wish) => Math.min(wish, limit));
}
