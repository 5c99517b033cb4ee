import type { GreyPicture, LineReader } from '../../engine/ocr.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { cropLine, type Cut } from './crop.ts';
import { greyOf } from './ink.ts';
import { meaningOf } from './meaning.ts';
import { readBox } from './readBox.ts';
import { textBoxes } from './textBoxes.ts';
import type { KnownNames, Label, TextBox } from './types.ts';

/** No sheet of ours carries more lines than this; the rest is texture. */
const mostLines = 60;

export interface ReadLabels {
  labels: Label[];
  /** The sheet lies upside down: its words read only when turned by 180 degrees. */
  upsideDown: boolean;
}

export interface Reading {
  /** Told shares 0..1. */
  onProgress?: (share: number) => void;
  /** Asked before each line; false leaves the rest unread. */
  goOn?: () => boolean;
}

/**
 * Reads the printed and pencilled lines on a squared sheet. Proposals only: nothing is entered by itself.
 *
 * @param notPaper 1 where copper, lamps or the cell lie
 * @param known what is known of names and tags before
 */
export async function readLabels(
  sheet: SquaredSheet,
  notPaper: Uint8Array,
  reader: LineReader,
  known: KnownNames,
  { onProgress = () => {}, goOn = () => true }: Reading = {},
): Promise<ReadLabels> {
  const boxes = likeliest(textBoxes(sheet, notPaper));
  const cut = cutter(sheet);
  const upsideDown = await liesUpsideDown(boxes, cut, reader, known, goOn);
  const labels: Label[] = [];
  for (const [n, box] of boxes.entries()) {
    if (!goOn()) break;
    const label = await readBox(box, (size) => cut(box, upsideDown, size), reader, known);
    if (label) labels.push(label);
    onProgress((n + 1) / boxes.length);
  }
  return { labels, upsideDown };
}

/** The lines that are shaped most like text, where texture gives too many. */
function likeliest(boxes: TextBox[]): TextBox[] {
  const isShaped = ({ box, heightMm }: TextBox) => (box.x1 - box.x0 > 0.8 * heightMm ? 1 : 0);
  return [...boxes].sort((a, b) => isShaped(b) - isShaped(a)).slice(0, mostLines);
}

type Cutter = (box: TextBox, turned: boolean, size?: Cut) => GreyPicture;

function cutter(sheet: SquaredSheet): Cutter {
  const grey = greyOf(sheet);
  const [ox, oy] = sheet.originMm;
  const k = sheet.pxPerMm;
  return ({ box: { x0, y0, x1, y1 } }, turned, size) => {
    const px = { x0: (x0 - ox) * k, y0: (y0 - oy) * k, x1: (x1 - ox) * k, y1: (y1 - oy) * k };
    return cropLine(grey, sheet.width, sheet.height, px, turned, size);
  };
}

/** The longest lines tell best which way up they read. */
async function liesUpsideDown(
  boxes: TextBox[],
  cut: Cutter,
  reader: LineReader,
  known: KnownNames,
  goOn: () => boolean,
): Promise<boolean> {
  const longest = [...boxes]
    .filter(({ box, heightMm }) => box.x1 - box.x0 > 1.2 * heightMm)
    .sort((a, b) => b.box.x1 - b.box.x0 - (a.box.x1 - a.box.x0))
    .slice(0, 4);
  let upright = 0;
  let turned = 0;
  for (const box of longest) {
    if (!goOn()) return false;
    upright += worth(await reader.read(cut(box, false)), known);
    turned += worth(await reader.read(cut(box, true)), known);
  }
  return turned > upright + 0.25;
}

/** A name that stands on its head may read as another text as surely: what a reading means tells more. */
const meaningWorth = { tag: 4, lamp: 1.5, cell: 1.5, title: 1, polarity: 0, nothing: 0.5 };

/** Certainty of a reading by what it means, where letters and digits were read at all. */
function worth({ text, certainty }: { text: string; certainty: number }, known: KnownNames): number {
  const signs = text.replace(/[^A-Za-z0-9]/g, '').length;
  const means = meaningOf(text, known);
  const expected = means.kind === 'lamp' && known.lamps.includes(means.id) ? 2 : 1;
  return signs < 2 ? 0 : certainty * meaningWorth[means.kind] * expected;
}
