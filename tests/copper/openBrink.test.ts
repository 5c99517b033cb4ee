import { describe, expect, it } from 'vitest';
import { openBrink } from '../../src/copper/openBrink.ts';

/** A base of 40 x 30 mm at 10 px/mm with 1 mm of the table round it. */
const frame = {
  width: 420,
  height: 320,
  pxPerMm: 10,
  originMm: [-1, -1] as const,
  baseMm: { width: 40, height: 30 },
};

/** Copper in these boxes, mm on the base: x0, y0, x1, y1. */
function copperIn(...boxes: number[][]) {
  const filled = new Uint8Array(frame.width * frame.height);
  for (const [x0, y0, x1, y1] of boxes)
    for (let j = Math.round((y0 + 1) * 10); j < Math.round((y1 + 1) * 10); j++)
      filled.fill(
        1,
        j * frame.width + Math.round((x0 + 1) * 10),
        j * frame.width + Math.round((x1 + 1) * 10),
      );
  return { filled, strict: filled.slice(), likelihood: new Uint8Array(filled.length).fill(200) };
}

describe('Along the border of the base', () => {
  it('what comes from nowhere within is no copper, on any side', () => {
    for (const box of [
      [-1, -1, 41, 0.8],
      [5, 29.2, 30, 31],
      [-1, 3, 0.9, 20],
      [39, 0, 41, 30],
    ])
      expect(openBrink(copperIn(box), frame).filled.some(Boolean)).toBe(false);
  });

  it('tape that runs to the border or along it stays whole', () => {
    for (const boxes of [
      [[10, -1, 15, 20]],
      [[-1, 10, 25, 13]],
      [[5, 0, 35, 3]],
      [[1, 5, 6, 25]],
      [[34.5, 26, 39.5, 29.5]],
    ]) {
      const masks = copperIn(...boxes);
      expect(Buffer.compare(openBrink(masks, frame).filled, masks.filled)).toBe(0);
    }
  });

  it('two strips that end there are not joined by the table beyond', () => {
    const joined = copperIn([5, -1, 10, 20], [20, -1, 25, 20], [-1, -1, 41, 0.4]);
    const { filled, strict } = openBrink(joined, frame);
    const at = (x: number, y: number): number =>
      Math.round((y + 1) * 10) * frame.width + Math.round((x + 1) * 10);
    expect(filled[at(15, 0)]).toBe(0);
    expect(strict[at(15, 0)]).toBe(0);
    expect(filled[at(7, 0)]).toBe(1);
    expect(filled[at(22, 10)]).toBe(1);
  });
});
