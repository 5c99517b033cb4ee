import type { GreyPicture, LineReader } from '../../engine/ocr.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { cropLine } from './crop.ts';
import { greyOf } from './ink.ts';
import { meaningOf } from './meaning.ts';
import { textBoxes } from './textBoxes.ts';
import type { Label, TextBox } from './types.ts';

/** No sheet of ours carries more lines than this; the rest is texture. */
const mostLines = 60;

/** What a lamp's label or a polarity mark can hold: tried again with only these where the first reading means nothing. */
const lampLetters = 'L0123456789+-';

export interface ReadSheet {
  labels: Label[];
  /** The sheet lies upside down: its words read only when turned by 180 degrees. */
  upsideDown: boolean;
}

/**
 * Reads the printed and pencilled lines on a squared sheet. Proposals only: nothing is entered by itself.
 *
 * @param notPaper 1 where copper, lamps or the cell lie
 * @param isTag gives a plan tag's code when a text is one
 * @param onProgress called with 0..1
 */
export async function readLabels(
  sheet: SquaredSheet,
  notPaper: Uint8Array,
  reader: LineReader,
  isTag: (text: string) => string | undefined,
  onProgress: (done: number) => void = () => {},
): Promise<ReadSheet> {
  const boxes = textBoxes(sheet, notPaper).slice(0, mostLines);
  const grey = greyOf(sheet);
  const cut = (box: TextBox, turned: boolean): GreyPicture => {
    const { x0, y0, x1, y1 } = box.box;
    const [ox, oy] = sheet.originMm;
    const k = sheet.pxPerMm;
    const px = { x0: (x0 - ox) * k, y0: (y0 - oy) * k, x1: (x1 - ox) * k, y1: (y1 - oy) * k };
    return cropLine(grey, sheet.width, sheet.height, px, turned);
  };
  const upsideDown = await liesUpsideDown(boxes, cut, reader);
  const labels: Label[] = [];
  for (const [n, box] of boxes.entries()) {
    const picture = cut(box, upsideDown);
    let line = await reader.read(picture);
    let means = meaningOf(line.text, isTag);
    if (means.kind === 'nothing' && isShort(box)) {
      line = await reader.read(picture, lampLetters);
      means = meaningOf(line.text, isTag);
    }
    onProgress((n + 1) / boxes.length);
    if (means.kind === 'nothing') continue;
    const { x0, y0, x1, y1 } = box.box;
    labels.push({ ...line, at: [(x0 + x1) / 2, (y0 + y1) / 2], box: box.box, means });
  }
  return { labels, upsideDown };
}

function isShort({ box, heightMm }: TextBox): boolean {
  return box.x1 - box.x0 < 3.5 * heightMm || box.x1 - box.x0 < 4;
}

/** The longest lines tell best which way up they read. */
async function liesUpsideDown(
  boxes: TextBox[],
  cut: (box: TextBox, turned: boolean) => GreyPicture,
  reader: LineReader,
): Promise<boolean> {
  const longest = [...boxes]
    .filter(({ box, heightMm }) => box.x1 - box.x0 > 1.2 * heightMm)
    .sort((a, b) => b.box.x1 - b.box.x0 - (a.box.x1 - a.box.x0))
    .slice(0, 4);
  let upright = 0;
  let turned = 0;
  for (const box of longest) {
    upright += worth(await reader.read(cut(box, false)));
    turned += worth(await reader.read(cut(box, true)));
  }
  return turned > upright + 0.25;
}

/** Certainty of a reading, where letters and digits were read at all. */
function worth({ text, certainty }: { text: string; certainty: number }): number {
  const known = text.replace(/[^A-Za-z0-9]/g, '').length;
  return known < 2 ? 0 : certainty;
}
