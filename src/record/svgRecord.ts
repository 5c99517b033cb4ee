import type { Card } from '../card/index.ts';
import type { Box } from '../geometry/index.ts';
import { sayPower, type PowerReport } from '../power/index.ts';
import { recordWords as words } from '../words/record.ts';
import { lampStrips } from './document/lampStrips.ts';
import { markShapes, sheetBox } from './drawing/markedSheet.ts';
import { moved } from './drawing/move.ts';
import { marginMm, placeMarks } from './drawing/placeMarks.ts';
import { circuitShapes } from './drawing/redrawn.ts';
import { svgOf } from './drawing/svg.ts';
import { textLines } from './drawing/textLines.ts';
import type { Shape } from './drawing/types.ts';
import type { Recordable } from './types.ts';

const gapMm = 4;
/** Sentences below a small base are still set this wide. */
const leastWidthMm = 100;

/** The redrawn circuit with its proof marks, and below it what lights, as one SVG, true to scale (1 unit = 1 mm). */
export function svgRecord(checked: Recordable, power: PowerReport, card: Card): string {
  const sheet = sheetBox(checked);
  const marks = placeMarks(checked.netlist.findings, sheet);
  const box: Box = { x0: sheet.x0 - marginMm, y0: sheet.y0 - 3, x1: sheet.x1 + marginMm, y1: sheet.y1 + 11 };
  const light = lightBelow(power, card, box);
  return svgOf(
    {
      title: words.heading(card.title ?? words.untitled),
      box: light.box,
      shapes: [...circuitShapes(checked, card), ...marks.flatMap(markShapes), ...light.shapes],
    },
    'mm',
  );
}

/** Lamps at their brightness, power figures and the joints to press first, below a box; and the box that holds both. */
function lightBelow(power: PowerReport, card: Card, box: Box): { shapes: Shape[]; box: Box } {
  const shapes: Shape[] = [];
  const all = { ...box };
  for (const block of lampStrips(power, card)) {
    if (block.kind !== 'figure') continue;
    const { drawing } = block;
    shapes.push(...drawing.shapes.map((shape) => moved(shape, box.x0, all.y1)));
    all.x1 = Math.max(all.x1, box.x0 + drawing.box.x1);
    all.y1 += drawing.box.y1 + gapMm;
  }
  const { tells, joints } = sayPower(power);
  const sentences = joints.length > 0 ? [...tells, `${words.power.joints}:`, ...joints] : tells;
  const widthMm = Math.max(leastWidthMm, all.x1 - all.x0);
  const said = textLines(sentences, { x0: box.x0, y0: all.y1, widthMm, size: 2.6 });
  return { shapes: [...shapes, ...said.shapes], box: { ...all, x1: all.x0 + widthMm, y1: said.y1 } };
}
