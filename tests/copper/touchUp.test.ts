import { expect, test } from 'vitest';
import { applyTouchUp, paintStroke, repaint, strokeBox } from '../../src/copper/index.ts';
import { bridgedMask, drawStrip } from '../trace/creasedStrip.ts';
import type { TouchUp } from '../../src/card/index.ts';

const add: TouchUp = {
  do: 'add',
  width_mm: 2,
  path: [
    [5, 1.5],
    [15, 1.5],
  ],
};
const remove: TouchUp = { do: 'remove', width_mm: 1, path: [[16, 6]] };
const fresh = () => bridgedMask(drawStrip({ seed: 2, paper: 'white', gapMm: 0 }));
const count = (mask: Uint8Array): number => mask.reduce((sum, v) => sum + v, 0);

test('a stroke covers its length times its width and a round end on each side', () => {
  const mask = fresh();
  const before = count(mask.filled);
  const box = paintStroke(mask, add);
  const area = (count(mask.filled) - before) / mask.pxPerMm ** 2;
  expect(area).toBeCloseTo(10 * 2 + Math.PI, 0);
  expect(box).toEqual({ x0: 4, y0: 0.5, x1: 16, y1: 2.5 });
  expect(strokeBox(add)).toEqual(box);
});

test('strokes are painted in order on a copy', () => {
  const mask = fresh();
  const before = mask.filled.slice();
  const touched = applyTouchUp(mask, [add, remove]);
  expect(mask.filled).toEqual(before);
  expect(touched.filled[60 * mask.width + 160]).toBe(0);
  expect(touched.strict[15 * mask.width + 100]).toBe(1);
});

test('undo: repainting the box without the stroke gives the mask before it', () => {
  const original = fresh();
  const painted = applyTouchUp(original, [add, remove]);
  repaint(painted, original, strokeBox(remove), [add]);
  expect(painted.filled).toEqual(applyTouchUp(original, [add]).filled);
});
