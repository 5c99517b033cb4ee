import type { Card } from '../card/index.ts';
import type { PowerReport } from '../power/index.ts';
import { recordWords } from '../words/record.ts';
import { recordDocument } from './document/recordDocument.ts';
import { inks } from './drawing/inks.ts';
import { setBlock } from './pdf/blocks.ts';
import { bytesOf, fontNames, marginPt, openPdf, type Setting } from './pdf/page.ts';
import type { Paper, RecordFonts } from './pdf/types.ts';
import type { Recordable, RecordImages } from './types.ts';

export interface PdfOptions {
  images?: RecordImages;
  fonts: RecordFonts;
  paper?: Paper;
  /** The day it is made, for the document's own dates. */
  made?: Date;
}

/** The record as a PDF: vectors and real text, tagged in reading order, fonts embedded. */
export async function pdfRecord(
  checked: Recordable,
  power: PowerReport,
  card: Card,
  { images, fonts, paper = 'a4', made = new Date() }: PdfOptions,
): Promise<Uint8Array> {
  const record = recordDocument(checked, power, card, images);
  const setting = await openPdf(record, fonts, paper, made);
  record.blocks.forEach((block, i) => setBlock(setting, block, record.blocks[i + 1]));
  setting.root.end();
  numberPages(setting);
  return bytesOf(setting.pdf);
}

function numberPages({ pdf, left, width }: Setting): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let i = start; i < start + count; i++) {
    pdf.switchToPage(i);
    pdf.markContent('Artifact', { type: 'Pagination' });
    pdf.font(fontNames.regular).fontSize(8).fillColor(inks.grey);
    const y = pdf.page.height - marginPt + 16;
    // The foot lies in the margin, where text would otherwise turn the page.
    pdf.page.margins.bottom = 0;
    pdf.text(recordWords.page(i + 1, count), left, y, { width, align: 'right', lineBreak: false });
    pdf.endMarkedContent();
  }
}
