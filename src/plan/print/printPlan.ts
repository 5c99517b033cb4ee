import type { Card } from '../../card/index.ts';
import { planWords } from '../../words/plan.ts';
import { FoilproofError } from '../../words/index.ts';
import { language } from '../../words/language.ts';
import { cutList } from './cutList.ts';
import { printLists } from './lists.ts';
import { POINTS_PER_MM, printSheet } from './page.ts';
import { templatesOf } from './templates.ts';
import type { PrintOptions } from './types.ts';
import { paperMm } from './types.ts';

/** The usual tape on the roll (common practice). */
const ROLL_MM = 5;

/**
 * The plan as a PDF at its true size: base sheet, flaps, punch template and its mirror image, foam, lists and steps.
 * Tagged and searchable; larger sheets are tiled.
 * @throws FoilproofError when the card has no strips planned
 */
export async function printPlan(card: Card, options: PrintOptions): Promise<Uint8Array> {
  if (!card.plan?.strips.length) throw new FoilproofError(planWords.nothingPlanned);
  const rollMm = options.rollMm ?? ROLL_MM;
  const { default: PDFDocument } = await import('pdfkit');
  const [width, height] = paperMm[options.paper];
  const pdf = new PDFDocument({
    size: [width * POINTS_PER_MM, height * POINTS_PER_MM],
    margin: 0,
    autoFirstPage: false,
    // No font of its own to begin with: in the browser pdfkit carries none.
    font: '',
    pdfVersion: '1.7',
    lang: language(),
    tagged: true,
    displayTitle: true,
    info: {
      Title: planWords.printTitle(card.title),
      Creator: 'Foilproof',
      Producer: 'Foilproof',
      CreationDate: options.made,
      ModDate: options.made,
    },
  });
  pdf.registerFont('Regular', options.fonts.regular as Buffer);
  pdf.registerFont('Bold', options.fonts.bold as Buffer);
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  for (const sheet of templatesOf(card)) printSheet(pdf, root, sheet, options);
  printLists(pdf, root, card, cutList(card, rollMm), rollMm);
  root.end();
  return bytesOf(pdf);
}

function bytesOf(pdf: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => {
      const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        all.set(chunk, at);
        at += chunk.length;
      }
      resolve(all);
    });
    pdf.end();
  });
}
