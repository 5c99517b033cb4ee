import type { Card } from '../../card/index.ts';
import type { PowerReport } from '../../power/index.ts';
import { lampStrip, mostAcross, mostDown } from '../drawing/lampStrip.ts';
import type { Block } from './types.ts';

/** The lamps at their brightness, in as many figures as fit the page. */
export function lampStrips({ states }: PowerReport, { lamps }: Card): Block[] {
  return chunks(states, mostDown).flatMap((some) =>
    chunks(lamps, mostAcross).map((across): Block => {
      const drawing = lampStrip(some, across);
      return { kind: 'figure', drawing, caption: drawing.title, widthMm: drawing.box.x1 };
    }),
  );
}

/** Runs of at most so many items. */
function chunks<T>(items: readonly T[], most: number): T[][] {
  const count = Math.ceil(items.length / most);
  return Array.from({ length: count }, (_, i) => items.slice(i * most, (i + 1) * most));
}
