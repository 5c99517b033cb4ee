import { recordWords as words } from '../../words/record.ts';
import type { Block } from '../document/types.ts';
import { inks } from '../drawing/inks.ts';
import { drawInPdf } from './drawInPdf.ts';
import { bodyPt, fontNames, group, marginPt, room, tagged, type Setting } from './page.ts';
import { setTable } from './table.ts';
import { pointsPerMm } from './types.ts';

type BlockOf<K extends Block['kind']> = Extract<Block, { kind: K }>;

/** Sets one block below the last. @param next what follows, so that a heading does not stay behind alone */
export function setBlock(setting: Setting, block: Block, next?: Block): void {
  switch (block.kind) {
    case 'heading':
      return setHeading(setting, block, next);
    case 'para':
      return setPara(setting, block.text, block.small ?? false);
    case 'verdict':
      return setVerdict(setting, block);
    case 'list':
      return setList(setting, block.items);
    case 'table':
      return setTable(setting, block);
    case 'figure':
      return setFigure(setting, block);
    case 'finding':
      return setFinding(setting, block);
    case 'cautions':
      return block.items.forEach(({ title, text }) => setCaution(setting, title, text));
  }
}

function setHeading(setting: Setting, { level, text }: BlockOf<'heading'>, next?: Block): void {
  const { pdf, left, width, root } = setting;
  if (level === 2) {
    pdf.y += 12;
    room(setting, next?.kind === 'figure' ? headingPt + figureSize(setting, next, headingPt).height : 90);
  }
  tagged(root, pdf, `H${level}`, () => {
    pdf
      .font(fontNames.bold)
      .fontSize(level === 1 ? 20 : 13)
      .fillColor(inks.graphite);
    pdf.text(text, left, pdf.y, { width });
  });
  pdf.y += level === 1 ? 6 : 3;
}

function setPara({ pdf, left, width, root }: Setting, text: string, small: boolean): void {
  tagged(root, pdf, 'P', () => {
    pdf
      .font(fontNames.regular)
      .fontSize(small ? 8.5 : bodyPt)
      .fillColor(small ? inks.grey : inks.graphite);
    pdf.text(text, left, pdf.y, { width, lineGap: 1.5 });
  });
  pdf.y += 3;
}

function setVerdict({ pdf, left, width, root }: Setting, { text, hold }: BlockOf<'verdict'>): void {
  const ink = hold ? inks.copper : inks.graphite;
  const top = pdf.y;
  tagged(root, pdf, 'P', () => {
    pdf
      .font(fontNames.bold)
      .fontSize(15)
      .fillColor(ink)
      .text(text, left + 12, top + 2, { width: width - 12 });
  });
  pdf.markContent('Artifact', { type: 'Layout' });
  pdf.rect(left, top, 4, pdf.y - top + 2).fill(ink);
  pdf.endMarkedContent();
  pdf.y += 8;
}

function setList(setting: Setting, items: string[]): void {
  const { pdf, left, width, root } = setting;
  const list = group(root, pdf, 'L');
  pdf.font(fontNames.regular).fontSize(bodyPt).fillColor(inks.graphite);
  for (const text of items) {
    room(setting, pdf.heightOfString(text, { width: width - 12, lineGap: 1.5 }));
    const item = group(list, pdf, 'LI');
    const top = pdf.y;
    pdf.font(fontNames.regular).fontSize(bodyPt).fillColor(inks.graphite);
    tagged(item, pdf, 'Lbl', () => pdf.text('–', left, top, { width: 10 }));
    tagged(item, pdf, 'LBody', () => pdf.text(text, left + 12, top, { width: width - 12, lineGap: 1.5 }));
    pdf.y += 2;
  }
  pdf.y += 4;
}

const captionPt = 24;
const headingPt = 24;
/** A figure that may be of any size takes what a page has left, if that is this share of a whole page. */
const enoughLeft = 0.6;

/** A figure at its true size if that fits the page, or as large as the page allows. */
function figureSize({ pdf, width }: Setting, { drawing, widthMm }: BlockOf<'figure'>, abovePt = 0) {
  const [wide, high] = [drawing.box.x1 - drawing.box.x0, drawing.box.y1 - drawing.box.y0];
  const whole = pdf.page.height - 2 * marginPt - 60;
  const left = pdf.page.height - marginPt - pdf.y - abovePt - captionPt - 8;
  const tallest = widthMm === undefined && left > enoughLeft * whole ? Math.min(whole, left) : whole;
  const wished = widthMm ? (widthMm / wide) * pointsPerMm : Infinity;
  const scale = Math.min(wished, width / wide, tallest / high);
  return { scale, height: high * scale + captionPt };
}

function setFigure(setting: Setting, block: BlockOf<'figure'>): void {
  const { pdf, left, root } = setting;
  const { scale, height } = figureSize(setting, block);
  room(setting, height);
  const top = pdf.y;
  tagged(root, pdf, 'Figure', () => drawInPdf(pdf, block.drawing, left, top, scale), block.caption);
  pdf.y = top + height - captionPt + 4;
  pdf.x = left;
  setPara(setting, block.caption, true);
}

const numberPt = 26;
const cutOutPt = 88;

function setFinding(setting: Setting, block: BlockOf<'finding'>): void {
  const { pdf, left, width, root } = setting;
  const { number, title, say, todo, settle, settled, cutOut } = block;
  const column = width - numberPt - (cutOut ? cutOutPt + 12 : 0);
  const lines = [say, todo && `${words.toDo}: ${todo}`, settle && `${words.toSettle}: ${settle}`].filter(
    Boolean,
  );
  const options = { width: column, lineGap: 1 };
  pdf.font(fontNames.bold).fontSize(bodyPt);
  const bold = [title, ...(settled ? [settled] : [])];
  const boldHeight = bold.reduce((sum, text) => sum + pdf.heightOfString(text, options), 0);
  pdf.font(fontNames.regular);
  const height = lines.reduce((sum, text) => sum + pdf.heightOfString(text, options) + 2, boldHeight);
  const whole = Math.max(height, cutOut ? cutOutPt : 0);
  room(setting, whole + 10);
  const top = pdf.y;
  const section = group(root, pdf, 'Sect');
  tagged(section, pdf, 'P', () => drawNumber(setting, number, top));
  const put = (text: string, face: string, tag: string) =>
    tagged(section, pdf, tag, () => {
      pdf
        .font(face)
        .fontSize(bodyPt)
        .fillColor(inks.graphite)
        .text(text, left + numberPt, pdf.y, options);
      pdf.y += 2;
    });
  pdf.y = top;
  put(title, fontNames.bold, 'H3');
  for (const line of lines) put(line, fontNames.regular, 'P');
  if (settled) put(settled, fontNames.bold, 'P');
  if (cutOut) {
    const scale = cutOutPt / (cutOut.box.x1 - cutOut.box.x0);
    const x = left + width - cutOutPt;
    tagged(section, pdf, 'Figure', () => drawInPdf(pdf, cutOut, x, top, scale), cutOut.title);
  }
  pdf.x = left;
  pdf.y = top + whole + 10;
}

function drawNumber({ pdf, left }: Setting, number: number, top: number): void {
  pdf
    .circle(left + 9, top + 8, 8.5)
    .lineWidth(1.1)
    .stroke(inks.copper);
  pdf
    .font(fontNames.bold)
    .fontSize(number > 99 ? 7 : 9)
    .fillColor(inks.copper);
  pdf.text(String(number), left, top + 2.4, { width: 18, align: 'center' });
}

function setCaution(setting: Setting, title: string, text: string): void {
  const { pdf, left, width, root } = setting;
  pdf.font(fontNames.regular).fontSize(bodyPt);
  room(setting, pdf.heightOfString(text, { width, lineGap: 1.5 }) + 20);
  tagged(root, pdf, 'H3', () => {
    pdf.font(fontNames.bold).fontSize(bodyPt).fillColor(inks.graphite).text(title, left, pdf.y, { width });
  });
  setPara(setting, text, false);
  pdf.y += 3;
}
