import type { GreyPicture, LineReader } from '../../engine/ocr.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { cropLine, padPx } from './crop.ts';
import { greyOf } from './ink.ts';
import { meaningOf } from './meaning.ts';
import { isPlus } from './plusShape.ts';
import { textBoxes } from './textBoxes.ts';
import type { KnownNames, Label, TextBox } from './types.ts';

/** No sheet of ours carries more lines than this; the rest is texture. */
const mostLines = 60;
/** A + told by its shape is as sure as this. */
const plusSure = 0.9;

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
  const boxes = textBoxes(sheet, notPaper).slice(0, mostLines);
  const cut = cutter(sheet);
  const upsideDown = await liesUpsideDown(boxes, cut, reader, goOn);
  const labels: Label[] = [];
  for (const [n, box] of boxes.entries()) {
    if (!goOn()) break;
    const label = await readBox(box, cut(box, upsideDown), reader, known);
    if (label) labels.push(label);
    onProgress((n + 1) / boxes.length);
  }
  return { labels, upsideDown };
}

type Cut = (box: TextBox, turned: boolean) => GreyPicture;

function cutter(sheet: SquaredSheet): Cut {
  const grey = greyOf(sheet);
  const [ox, oy] = sheet.originMm;
  const k = sheet.pxPerMm;
  return ({ box: { x0, y0, x1, y1 } }, turned) => {
    const px = { x0: (x0 - ox) * k, y0: (y0 - oy) * k, x1: (x1 - ox) * k, y1: (y1 - oy) * k };
    return cropLine(grey, sheet.width, sheet.height, px, turned);
  };
}

async function readBox(
  { box, heightMm }: TextBox,
  picture: GreyPicture,
  reader: LineReader,
  known: KnownNames,
): Promise<Label | undefined> {
  const at = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2] as const;
  if (isPlus(picture, padPx))
    return { text: '+', certainty: plusSure, at, box, means: { kind: 'polarity', sign: '+' } };
  const free = await reader.read(picture);
  const first = { ...free, at, box, means: meaningOf(free.text, known) };
  if (!isShort(box, heightMm) || isKnown(first, known))
    return first.means.kind === 'nothing' ? undefined : first;
  const spelt = await reader.read(picture, nameLetters(known));
  const second = { ...spelt, at, box, means: meaningOf(spelt.text, known) };
  if (isKnown(second, known)) return second;
  const best = first.means.kind === 'nothing' ? second : first;
  if (best.means.kind === 'nothing') return undefined;
  const trusted = sameName(first, second) && isWideEnough(best, heightMm);
  return trusted ? best : { ...best, certainty: Math.min(best.certainty, doubted) };
}

/** A name that nobody expects is doubted where a second reading says otherwise. */
const doubted = 0.5;

function sameName({ means: a }: Label, { means: b }: Label): boolean {
  return a.kind === 'lamp' && b.kind === 'lamp' && a.id === b.id;
}

/** Letters and digits are at least so wide for their height; more of them than fit were not there. */
const leastAspect = 0.55;

function isWideEnough({ box, text }: Label, heightMm: number): boolean {
  return box.x1 - box.x0 >= leastAspect * heightMm * text.replace(/\s/g, '').length;
}

/** Whether a reading needs no second one: it is no name, or one that is expected. */
function isKnown({ means }: Label, { lamps }: KnownNames): boolean {
  return means.kind === 'lamp' ? lamps.includes(means.id) : means.kind !== 'nothing';
}

function isShort({ x0, x1 }: TextBox['box'], heightMm: number): boolean {
  return x1 - x0 < 3.5 * heightMm || x1 - x0 < 4;
}

/** What a lamp's name can hold: read again with only these where the first reading means nothing. */
function nameLetters({ lamps }: KnownNames): string {
  return [...new Set(`L0123456789${lamps.join('')}`)].join('');
}

/** The longest lines tell best which way up they read. */
async function liesUpsideDown(
  boxes: TextBox[],
  cut: Cut,
  reader: LineReader,
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
