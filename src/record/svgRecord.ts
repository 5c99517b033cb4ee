import type { Card } from '../card/index.ts';
import { markShapes, sheetBox } from './drawing/markedSheet.ts';
import { marginMm, placeMarks } from './drawing/placeMarks.ts';
import { circuitShapes } from './drawing/redrawn.ts';
import { svgOf } from './drawing/svg.ts';
import { recordWords } from '../words/record.ts';
import type { Recordable } from './types.ts';

/** The redrawn circuit with its proof marks as one SVG, true to scale (1 unit = 1 mm). */
export function svgRecord(checked: Recordable, card: Card): string {
  const box = sheetBox(checked);
  const marks = placeMarks(checked.netlist.findings, box);
  return svgOf(
    {
      title: recordWords.heading(card.title ?? recordWords.untitled),
      box: { x0: box.x0 - marginMm, y0: box.y0 - 3, x1: box.x1 + marginMm, y1: box.y1 + 11 },
      shapes: [...circuitShapes(checked, card), ...marks.flatMap(markShapes)],
    },
    'mm',
  );
}
