import { printBarMm, shortLength } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { drawTemplate } from './drawTemplate.ts';
import type { PrintOptions, Template } from './types.ts';
import { paperMm } from './types.ts';

type Pdf = PDFKit.PDFDocument;
export type Tag = ReturnType<Pdf['struct']>;

export const POINTS_PER_MM = 72 / 25.4;
export const MARGIN_MM = 10;
const HEAD_MM = 16;
const FOOT_MM = 14;
/** Tiles of one sheet share so much, to be laid over each other. */
const LAP_MM = 12;
/** Room round the sheet for its registration crosses. */
const RIM_MM = 8;

/** A part of a sheet that one page takes, in mm from the sheet's corner less the rim. */
export interface Tile {
  column: number;
  row: number;
  x: number;
  y: number;
}

/** The pages that a sheet needs. One where it fits, upright; else a grid of tiles that overlap. */
export function tilesOf(
  sheet: Template,
  paper: PrintOptions['paper'],
): { tiles: Tile[]; columns: number; rows: number } {
  const { width, height } = roomOn(paper);
  const [w, h] = [sheet.width + 2 * RIM_MM, sheet.height + 2 * RIM_MM];
  const columns = w <= width ? 1 : Math.ceil((w - LAP_MM) / (width - LAP_MM));
  const rows = h <= height ? 1 : Math.ceil((h - LAP_MM) / (height - LAP_MM));
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      tiles.push({ column, row, x: column * (width - LAP_MM), y: row * (height - LAP_MM) });
    }
  }
  return { tiles, columns, rows };
}

function roomOn(paper: PrintOptions['paper']): { width: number; height: number } {
  const [width, height] = paperMm[paper];
  return { width: width - 2 * MARGIN_MM, height: height - 2 * MARGIN_MM - HEAD_MM - FOOT_MM };
}

/** Prints one sheet, on as many pages as it needs. */
export function printSheet(pdf: Pdf, root: Tag, sheet: Template, options: PrintOptions): void {
  const { tiles, columns, rows } = tilesOf(sheet, options.paper);
  for (const tile of tiles) {
    pdf.addPage();
    const part = tiles.length > 1 ? planWords.tile(tile.row + 1, rows, tile.column + 1, columns) : '';
    head(pdf, root, sheet.title, sheet.note, part);
    const alt = planWords.sheetAlt(sheet.title, sheet.strips.length, sheet.lamps.length, sheet.holes.length);
    root.add(pdf.struct('Figure', { alt }, [() => placeTile(pdf, sheet, tile, tiles.length === 1, options)]));
    foot(pdf, root, options);
  }
}

/** Title and what to do with the page. */
export function head(pdf: Pdf, root: Tag, title: string, note: string, part: string): void {
  const left = MARGIN_MM * POINTS_PER_MM;
  root.add(
    pdf.struct('H1', {}, [
      () =>
        pdf
          .font('Bold')
          .fontSize(13)
          .fillColor('#1c1a17')
          .text([title, part].filter(Boolean).join('  '), left, left, { lineBreak: false }),
    ]),
  );
  const width = pdf.page.width - 2 * left;
  root.add(
    pdf.struct('P', {}, [
      () =>
        pdf
          .font('Regular')
          .fontSize(8.5)
          .text(note, left, left + 18, { width }),
    ]),
  );
}

/** Draws the sheet at its true size; a tile is clipped to the page's room. */
function placeTile(pdf: Pdf, sheet: Template, tile: Tile, alone: boolean, { paper }: PrintOptions): void {
  const room = roomOn(paper);
  const left = alone ? (paperMm[paper][0] - sheet.width) / 2 : MARGIN_MM + RIM_MM - tile.x;
  const top = MARGIN_MM + HEAD_MM + RIM_MM - tile.y;
  pdf.save();
  pdf.scale(POINTS_PER_MM);
  pdf.rect(MARGIN_MM, MARGIN_MM + HEAD_MM, room.width, room.height).clip();
  if (sheet.mirrored) mirror(pdf, left, sheet.width);
  pdf.translate(left - sheet.origin[0], top - sheet.origin[1]);
  drawTemplate(pdf, sheet);
  pdf.restore();
}

/** Left and right changed about the sheet's middle. */
function mirror(pdf: Pdf, left: number, width: number): void {
  pdf.translate(2 * left + width, 0);
  pdf.transform(-1, 0, 0, 1, 0, 0);
}

/** The bar to measure the printer by. */
function foot(pdf: Pdf, root: Tag, { paper }: PrintOptions): void {
  const bar = printBarMm();
  const y = paperMm[paper][1] - MARGIN_MM - 4;
  const draw = () => {
    pdf.save();
    pdf.scale(POINTS_PER_MM);
    pdf.moveTo(MARGIN_MM, y).lineTo(MARGIN_MM + bar, y);
    for (const x of [MARGIN_MM, MARGIN_MM + bar]) pdf.moveTo(x, y - 2).lineTo(x, y + 2);
    pdf.lineWidth(0.1).strokeColor('#000000').stroke();
    pdf.restore();
  };
  root.add(pdf.struct('Figure', { alt: planWords.barAlt(shortLength(bar)) }, [draw]));
  const left = (MARGIN_MM + bar + 4) * POINTS_PER_MM;
  const text = () =>
    pdf
      .font('Regular')
      .fontSize(8.5)
      .fillColor('#1c1a17')
      .text(planWords.bar(shortLength(bar)), left, (y - 1.6) * POINTS_PER_MM, { lineBreak: false });
  root.add(pdf.struct('P', {}, [text]));
}
