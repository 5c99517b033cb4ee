import { median } from '../tables.ts';
import type { TapRow, TapStep } from './tapThrough.ts';

/** The last step that a row has by then: who finds no mistake taps no more. */
const stepAt = ({ steps }: TapRow, taps: number): TapStep => steps[Math.min(taps, steps.length - 1)];

const isRight = ({ pieces }: TapStep): boolean => pieces.found === pieces.truly;

/** How many photographs have their pieces right after each number of taps, how far the mask is, and what is left wrong. */
export function tapTable(rows: readonly TapRow[], mode: string, most: number): string {
  const after = Array.from({ length: most + 1 }, (_, taps) => rows.map((row) => stepAt(row, taps)));
  const line = (text: string, of: (steps: TapStep[]) => string): string =>
    `${text.padEnd(34)}${after.map((steps) => of(steps).padStart(8)).join('')}`;
  const taps = rows.flatMap(({ steps }) =>
    steps.flatMap(({ copperMs, wholeMs }) => (wholeMs ? [[copperMs ?? 0, wholeMs]] : [])),
  );
  return [
    `== taps, ${mode}`,
    line('taps', (steps) => String(after.indexOf(steps))),
    line(`pieces exactly right of ${rows.length}`, (steps) => String(steps.filter(isRight).length)),
    line('each true piece one found piece', (steps) => String(steps.filter(({ matched }) => matched).length)),
    line('mask IoU median', (steps) => (median(steps.map(({ iou }) => iou)) ?? NaN).toFixed(4)),
    line('mask IoU worst', (steps) => Math.min(...steps.map(({ iou }) => iou)).toFixed(4)),
    `a tap takes ${(median(taps.map(([ms]) => ms)) ?? NaN).toFixed(0)} ms until the copper is seen, ${(median(taps.map(([, ms]) => ms)) ?? NaN).toFixed(0)} ms until all is renewed (median)`,
    '',
    ...rows.filter(({ steps }) => steps.length > 1 || !steps[0].matched).map(tapLine),
  ].join('\n');
}

function tapLine({ name, steps, left }: TapRow): string {
  const each = steps.map(({ pieces, tapped }) => {
    const next = tapped ? ` ${tapped.kind} (${tapped.at.map((v) => v.toFixed(1)).join(', ')})` : '';
    return `${pieces.found}/${pieces.truly}${next}`;
  });
  return `${name.padEnd(24)}${each.join('  ')}${left.length ? `  left: ${left.join(', ')}` : ''}`;
}
