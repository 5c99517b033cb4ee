import type { GreyPicture, LineReader } from '../../engine/ocr.ts';
import type { Point } from '../../geometry/index.ts';
import { cuts, type Cut } from './crop.ts';
import { meaningOf } from './meaning.ts';
import { isMinus, isPlus } from './signShape.ts';
import type { KnownNames, Label, LabelMeaning, TextBox } from './types.ts';

/** A sign told by its shape is as sure as this. */
const signSure = 0.9;
/** Readings of several sizes that agree are so sure at least, where each alone was a guess. */
const agreedSure = 0.75;
/** A name that nobody expects and one reading alone gives, or that another contradicts as often, is doubted. */
const doubted = 0.5;

/** An S at a digit's place is a 5, or an 8 as seldom as this leaves open. */
const unsureDigit = 0.85;

interface Reading {
  text: string;
  certainty: number;
  means: LabelMeaning;
}

/**
 * Reads one line of ink, cut out in several sizes, and takes what most of the readings say.
 * @param picture the line cut out at a size
 * @returns undefined where it says nothing
 */
export async function readBox(
  { box, heightMm, clear }: TextBox,
  picture: (cut: Cut) => GreyPicture,
  reader: LineReader,
  known: KnownNames,
): Promise<Label | undefined> {
  const at: Point = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  const aspect = (box.x1 - box.x0) / heightMm;
  const first = picture(cuts[0]);
  const sign = isPlus(first, cuts[0].padPx) ? '+' : clear && isMinus(first, cuts[0].padPx) ? '-' : undefined;
  if (sign) return { text: sign, certainty: signSure, at, box, means: { kind: 'polarity', sign } };
  const readings: Reading[] = [];
  for (const cut of cuts) {
    const { text, certainty } = await reader.read(cut === cuts[0] ? first : picture(cut));
    readings.push({ text, certainty, means: meaningOf(text, known, aspect) });
    if (!isWorthMore(readings[0], aspect)) break;
  }
  const agreed = mostAgreed(readings, known);
  return agreed && { ...agreed, at, box };
}

/** Names and tags are few signs that stand for much: they are read again. Texture and titles are not. */
function isWorthMore({ text, means }: Reading, aspect: number): boolean {
  if (means.kind === 'tag' || /\d\s*\S{0,2}\s*\d/.test(text)) return true;
  return aspect > 0.7 && aspect < 4 && means.kind !== 'cell';
}

function mostAgreed(readings: readonly Reading[], known: KnownNames): Reading | undefined {
  const speaking = readings.filter(({ means }) => means.kind !== 'nothing');
  const ranked = groups(speaking)
    .map((same) => ({ same, expected: isExpected(same[0].means, known), sum: sumOf(same) }))
    .sort(
      (a, b) => Number(b.expected) - Number(a.expected) || b.same.length - a.same.length || b.sum - a.sum,
    );
  const [best, rival] = ranked;
  if (!best) return undefined;
  const surest = best.same.reduce((a, b) => (b.certainty > a.certainty ? b : a));
  const agreed = best.same.length > 1 ? Math.max(agreedSure, surest.certainty) : surest.certainty;
  const isOpen = rival !== undefined && rival.same.length >= best.same.length;
  const isAlone = best.same.length === 1 && readings.length > 1 && !best.expected;
  const told = best.expected || /\d|[^S]$/i.test(surest.text) ? agreed : agreed * unsureDigit;
  return { ...surest, certainty: isOpen || isAlone ? Math.min(doubted, told) : told };
}

/** Readings that mean the same, together. */
function groups(readings: readonly Reading[]): Reading[][] {
  const byMeaning = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = JSON.stringify(reading.means);
    byMeaning.set(key, [...(byMeaning.get(key) ?? []), reading]);
  }
  return [...byMeaning.values()];
}

function sumOf(readings: readonly Reading[]): number {
  return readings.reduce((sum, { certainty }) => sum + certainty, 0);
}

/** A lamp of the card or of its plan, or its plan's own tag. */
function isExpected(means: LabelMeaning, { lamps, tag }: KnownNames): boolean {
  return means.kind === 'lamp' ? lamps.includes(means.id) : means.kind === 'tag' && means.code === tag;
}
