import type { Card } from '../../../src/card/index.ts';
import { renewFrom } from '../../../src/check/index.ts';
import type { CheckOptions, Checked } from '../../../src/check/index.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Photo } from '../../../src/photo/index.ts';
import { seeded } from '../../trace/creasedStrip.ts';
import { inTrueFrame, leastPiece, pxPerMm } from '../compareMask.ts';
import type { Entry } from '../entry.ts';
import { frameFromCorners, frameOfSheet } from '../frame.ts';
import { iou, regions } from '../maskScore.ts';
import { answerTo, mistakesIn, type Mistake } from './mistakes.ts';

/** How a photograph stands after so many taps. */
export interface TapStep {
  pieces: { truly: number; found: number };
  /** Whether each true piece is one found piece and the other way round. */
  matched: boolean;
  iou: number;
  /** The mistake that was tapped at next, its place on the true base in mm; absent where there was none. */
  tapped?: { kind: Mistake['kind']; at: Point };
  /** What the next tap took until the copper was seen, and until everything was renewed, ms. */
  copperMs?: number;
  wholeMs?: number;
}

export interface TapRow {
  name: string;
  mode: string;
  steps: TapStep[];
  left: Mistake['kind'][];
}

/** A finger is so sure of its aim, mm. */
const aimMm = 0.5;

/**
 * Plays a maker who knows which strips are parted on the sheet and taps at what the check has wrong, the largest mistake first
 * and up to half a millimetre off, and has the check renewed after each tap.
 */
export async function tapThrough(
  entry: Entry,
  mode: string,
  photo: Photo,
  first: Checked,
  most: number,
  options: CheckOptions = {},
): Promise<TapRow> {
  const random = seeded(seedOf(entry.name));
  const steps: TapStep[] = [];
  let checked = first;
  for (let n = 0; ; n++) {
    const { step, mistakes, toSheet } = look(entry, checked);
    steps.push(step);
    const [worst] = mistakes;
    if (!worst || n === most)
      return { name: entry.name, mode, steps, left: mistakes.map(({ kind }) => kind) };
    const place: Point = [worst.at[0] / pxPerMm, worst.at[1] / pxPerMm];
    step.tapped = { kind: worst.kind, at: place };
    const card = withTap(checked.card, answerTo(worst), toSheet(aimed(place, random)));
    const start = performance.now();
    checked = await renewFrom('copper', { photo, card, before: checked }, options);
    step.wholeMs = performance.now() - start;
    step.copperMs = checked.timingsMs.copper;
  }
}

function look(entry: Entry, checked: Checked) {
  const { base } = entry.card;
  const seen = frameOfSheet(checked.sheet, checked.photo, checked.outline.k1);
  const truth = entry.cornersPx
    ? frameFromCorners(entry.cornersPx, base, checked.photo, entry.k1 ?? 0)
    : seen;
  const { mine, theirs } = inTrueFrame(checked.mask, seen, entry.mask, truth, base);
  const mistakes = mistakesIn(mine, theirs, leastPiece);
  const step: TapStep = {
    pieces: { truly: regions(theirs, leastPiece), found: regions(mine, leastPiece) },
    matched: mistakes.length === 0,
    iou: iou(mine, theirs, entry.mask.valid),
  };
  return { step, mistakes, toSheet: (mm: Point): Point => seen.toMm(truth.toPx(mm)) };
}

function withTap(card: Card, kind: 'copper' | 'paper', [x, y]: Point): Card {
  return { ...card, teach: { ...card.teach, [kind]: [...card.teach[kind], [x, y]] } };
}

function aimed([x, y]: Point, random: () => number): Point {
  const [angle, far] = [2 * Math.PI * random(), aimMm * Math.sqrt(random())];
  return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
}

const seedOf = (name: string): number => [...name].reduce((sum, c) => (sum * 31 + c.charCodeAt(0)) | 0, 7);
