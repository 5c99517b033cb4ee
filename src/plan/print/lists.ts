import type { Card } from '../../card/index.ts';
import { benchWords } from '../../words/bench.ts';
import { cautionWords } from '../../words/cautions.ts';
import { longLength, shortLength } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import type { CutList } from './cutList.ts';
import type { Tag } from './page.ts';
import { MARGIN_MM, POINTS_PER_MM } from './page.ts';

type Pdf = PDFKit.PDFDocument;

const LEFT = MARGIN_MM * POINTS_PER_MM;

/** A patch is so much wider than what crosses on it, on each side (common practice). */
const PATCH_WIDER_MM = 3;

/** Cut list, parts list, build steps and cautions, as running text and tables. */
export function printLists(pdf: Pdf, root: Tag, card: Card, cuts: CutList, rollMm: number): void {
  pdf.addPage();
  pdf.y = LEFT;
  heading(pdf, root, planWords.cutHeading);
  paragraph(pdf, root, planWords.cutNote(shortLength(rollMm)));
  table(pdf, root, planWords.cutColumns, cutRows(cuts));
  for (const { widthMm, cutMm, rollMm: used } of cuts.byWidth) {
    paragraph(
      pdf,
      root,
      planWords.cutTotal(shortLength(widthMm), shortLength(cutMm, 0), shortLength(used, 0)),
    );
  }
  paragraph(pdf, root, planWords.cutSum(longLength(rolled(cuts))));
  heading(pdf, root, planWords.partsHeading);
  table(pdf, root, planWords.partsColumns, partRows(card, cuts));
  heading(pdf, root, planWords.stepsHeading);
  planWords
    .steps(
      card.plan!.strips.map(({ id, net }) => ({ id, net })),
      card.lamps.length,
    )
    .forEach((step, k) => {
      paragraph(pdf, root, `${k + 1}. ${step.do}`);
      paragraph(pdf, root, `${planWords.test} ${step.test}`, 14);
    });
  heading(pdf, root, cautionWords.heading);
  paragraph(pdf, root, cautionWords.defer);
  for (const { title, text } of cautionWords.items) paragraph(pdf, root, `${title}. ${text}`);
}

function cutRows({ lines }: CutList): string[][] {
  return lines.map((l) => [
    `${l.order}`,
    l.id,
    shortLength(l.widthMm) + (l.split ? ` ${planWords.half}` : ''),
    shortLength(l.lengthMm),
    `${l.folds}`,
    `${l.joins}`,
    shortLength(l.cutMm),
  ]);
}

function partRows(card: Card, cuts: CutList): string[][] {
  const rows: string[][] = [];
  for (const [colour, n] of counted(card.lamps.map((lamp) => lamp.colour)))
    rows.push([`${n}`, planWords.lampPart(benchWords.parts.colours[colour])]);
  const series = card.lamps.filter((lamp) => lamp.series_ohm > 0).map((lamp) => `${lamp.series_ohm}`);
  for (const [ohm, n] of counted(series)) rows.push([`${n}`, planWords.resistorPart(ohm)]);
  if (card.cell) rows.push(['1', planWords.cellPart(card.cell.kind)]);
  rows.push([longLength(rolled(cuts)), planWords.tapePart]);
  if (card.patches.length)
    rows.push([`${card.patches.length}`, planWords.patchPart(shortLength(PATCH_WIDER_MM))]);
  for (const { layers, layer_mm } of card.plan?.foam ?? [])
    rows.push([`${layers}`, planWords.foamPart(shortLength(layer_mm))]);
  return rows;
}

/** Tape off the roll, up to the next centimetre, mm. */
function rolled({ totalRollMm }: CutList): number {
  return 10 * Math.ceil(totalRollMm / 10);
}

function counted<T extends string>(values: T[]): [T, number][] {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts];
}

function room(pdf: Pdf, height: number): void {
  if (pdf.y + height <= pdf.page.height - LEFT) return;
  pdf.addPage();
  pdf.y = LEFT;
}

function heading(pdf: Pdf, root: Tag, text: string): void {
  room(pdf, 60);
  pdf.y += 8;
  root.add(
    pdf.struct('H1', {}, [() => pdf.font('Bold').fontSize(13).fillColor('#1c1a17').text(text, LEFT, pdf.y)]),
  );
  pdf.y += 3;
}

function paragraph(pdf: Pdf, root: Tag, text: string, indent = 0): void {
  const width = pdf.page.width - 2 * LEFT - indent;
  pdf.font('Regular').fontSize(9.5);
  room(pdf, pdf.heightOfString(text, { width }) + 3);
  root.add(
    pdf.struct('P', {}, [
      () =>
        pdf
          .font('Regular')
          .fontSize(9.5)
          .fillColor('#1c1a17')
          .text(text, LEFT + indent, pdf.y, { width }),
    ]),
  );
  pdf.y += 3;
}

/** Rows under a line of column names; the second column takes what is left. */
function table(pdf: Pdf, root: Tag, columns: readonly string[], rows: string[][]): void {
  const whole = pdf.page.width - 2 * LEFT;
  const narrow = 58;
  const widths = columns.map((_, k) => (k === 1 ? whole - narrow * (columns.length - 1) : narrow));
  const body = pdf.struct('Table');
  root.add(body);
  const line = (cells: readonly string[], tag: 'TH' | 'TD') => {
    pdf.font(tag === 'TH' ? 'Bold' : 'Regular').fontSize(9);
    const height =
      Math.max(...cells.map((cell, k) => pdf.heightOfString(cell, { width: widths[k] - 6 }))) + 3;
    room(pdf, height);
    const y = pdf.y;
    const row = pdf.struct('TR');
    body.add(row);
    let x = LEFT;
    for (const [k, cell] of cells.entries()) {
      const at = x;
      row.add(
        pdf.struct(tag, {}, [
          () =>
            pdf
              .font(tag === 'TH' ? 'Bold' : 'Regular')
              .fontSize(9)
              .fillColor('#1c1a17')
              .text(cell, at, y, { width: widths[k] - 6 }),
        ]),
      );
      x += widths[k];
    }
    row.end();
    pdf.y = y + height;
  };
  line(columns, 'TH');
  for (const cells of rows) line(cells, 'TD');
  body.end();
}
