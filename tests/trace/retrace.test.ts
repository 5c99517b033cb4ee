import { expect, test } from 'vitest';
import type { TouchUp } from '../../src/card/index.ts';
import { paintStroke } from '../../src/copper/index.ts';
import { retrace, trace } from '../../src/trace/index.ts';
import type { Traced } from '../../src/trace/index.ts';
import { seeded } from './creasedStrip.ts';
import { maskOf } from './masks.ts';

/** Two rails and 38 strips of 3 mm on an A6 card: 40 pieces. */
const forty = () =>
  maskOf(105, 148, [
    [5, 5, 100, 10],
    [5, 138, 100, 143],
    ...Array.from({ length: 38 }, (_, n) => {
      const x = 6 + (n % 19) * 4.9;
      const y = n < 19 ? 13 : 75;
      return [x, y, x + 3, y + 60] as const;
    }),
  ]);

const summary = ({ pieces, necks }: Traced) => ({
  pieces: pieces.map(({ areaMm2, ends, lines }) => [areaMm2.toFixed(2), ends.length, lines.length]).sort(),
  necks: necks.map(({ widthMm }) => widthMm.toFixed(2)).sort(),
});

test('twenty strokes one after the other give the same as tracing all anew', () => {
  const random = seeded(17);
  const mask = forty();
  let traced = trace(mask);
  for (let n = 0; n < 20; n++) {
    const [x, y] = [5 + 90 * random(), 5 + 130 * random()];
    const stroke: TouchUp = {
      do: random() < 0.5 ? 'add' : 'remove',
      width_mm: 1 + 3 * random(),
      path: [
        [x, y],
        [x + 14 * (random() - 0.5), y + 14 * (random() - 0.5)],
      ],
    };
    traced = retrace(traced, mask, paintStroke(mask, stroke));
    expect(traced.pieces.map(({ id }) => id)).toEqual(traced.pieces.map((_, k) => k + 1));
    if (n % 5 !== 4) continue;
    const anew = trace(mask);
    expect(summary(traced)).toEqual(summary(anew));
    expect(traced.clearances).toHaveLength(anew.clearances.length);
    traced.clearances.forEach(({ mm }, k) => expect(Math.abs(mm - anew.clearances[k].mm)).toBeLessThan(0.15));
  }
});

test('each piece id is the label of its own pixels', () => {
  const mask = forty();
  const stroke: TouchUp = {
    do: 'remove',
    width_mm: 2,
    path: [
      [2, 40],
      [60, 40],
    ],
  };
  const { pieces, labels } = retrace(trace(mask), mask, paintStroke(mask, stroke));
  const counts = new Map<number, number>();
  for (const id of labels) if (id) counts.set(id, (counts.get(id) ?? 0) + 1);
  expect(counts.size).toBe(pieces.length);
  for (const { id, areaMm2 } of pieces) expect(counts.get(id)! / 100).toBeCloseTo(areaMm2, 6);
});
