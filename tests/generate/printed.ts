import { cardSchema, type Card } from '../../src/card/index.ts';
import { printPlan } from '../../src/plan/index.ts';
import { fontsInNode } from '../../src/record/pdf/fontsInNode.ts';
import { readPart } from '../plan/print/readPage.ts';
import type { Build, Print } from './build.ts';
import { harbourNight } from './harbourNight.ts';
import { gridPxPerMm } from './lay.ts';

/** Top of the sheet on its page, mm: below the heading. Across it lies in the middle. */
const sheetTopMm = 34;
const paperWidthMm = 210;

/**
 * Harbour Night laid on its own printed plan instead of on pencil lines.
 * @param names what the lamps are called, in the order of the build's
 * @param moreMm added to the width of one planned strip, so that the plan has another tag
 */
export async function printedNight(
  names: readonly string[],
  moreMm = 0,
): Promise<{ build: Build; card: Card }> {
  const plain = harbourNight();
  const card = cardSchema.parse(plain.card);
  card.lamps.forEach((lamp, n) => (lamp.id = names[n]));
  card.plan!.strips[0].width_mm += moreMm;
  const lamps = plain.lamps.map((lamp, n) => ({ ...lamp, id: names[n] }));
  return { build: { ...plain, lamps, pencil: [], print: await printOf(card) }, card };
}

/** The base's page of the printed plan, at the grid's pixels a mm. */
async function printOf(card: Card): Promise<Print> {
  const bytes = await printPlan(card, { paper: 'a4', fonts: await fontsInNode(), made: new Date(0) });
  const { width_mm: width, height_mm: height } = card.base;
  const box = { x: (paperWidthMm - width) / 2, y: sheetTopMm, width, height };
  const part = await readPart(bytes, 1, gridPxPerMm * 25.4, box);
  const grey = Uint8Array.from({ length: part.width * part.height }, (_, k) => part.rgba[4 * k + 1]);
  return { width: part.width, height: part.height, grey };
}
