import type { RecordDocument } from '../document/types.ts';
import { paperPoints, type Paper, type RecordFonts } from './types.ts';

export type Pdf = PDFKit.PDFDocument;
export type Tag = ReturnType<Pdf['struct']>;

export const fontNames = { regular: 'Regular', bold: 'Bold' } as const;
export const marginPt = 45;
export const bodyPt = 10;

/** The page being set: the document, the column it is set in, and the root of its reading order. */
export interface Setting {
  pdf: Pdf;
  left: number;
  width: number;
  root: Tag;
}

/**
 * Opens a tagged document on its first page. pdfkit is loaded only now, so that a page that prints nothing does not carry it.
 */
export async function openPdf(
  record: RecordDocument,
  fonts: RecordFonts,
  paper: Paper,
  made: Date,
): Promise<Setting> {
  const { default: PDFDocument } = await import('pdfkit');
  const [pageWidth, pageHeight] = paperPoints[paper];
  const pdf = new PDFDocument({
    size: [pageWidth, pageHeight],
    margin: marginPt,
    bufferPages: true,
    // No font of its own to begin with: in the browser pdfkit carries none.
    font: '',
    pdfVersion: '1.7',
    lang: record.language,
    tagged: true,
    displayTitle: true,
    info: {
      Title: record.title,
      Creator: 'Foilproof',
      Producer: 'Foilproof',
      CreationDate: made,
      ModDate: made,
    },
  });
  pdf.registerFont(fontNames.regular, fonts.regular as Buffer);
  pdf.registerFont(fontNames.bold, fonts.bold as Buffer);
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  return { pdf, left: marginPt, width: pageWidth - 2 * marginPt, root };
}

/** Turns the page unless so much height is left on it. */
export function room({ pdf }: Setting, height: number): void {
  if (pdf.y + height > pdf.page.height - marginPt) pdf.addPage();
}

/** Puts something into the reading order under a tag. */
export function tagged(parent: Tag, pdf: Pdf, tag: string, draw: () => void, alt?: string): Tag {
  const element = alt === undefined ? pdf.struct(tag, {}, [draw]) : pdf.struct(tag, { alt }, [draw]);
  parent.add(element);
  return element;
}

/** A tag that holds others. */
export function group(parent: Tag, pdf: Pdf, tag: string): Tag {
  const element = pdf.struct(tag);
  parent.add(element);
  return element;
}

export function bytesOf(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => resolve(joined(chunks)));
    pdf.end();
  });
}

function joined(chunks: Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}
