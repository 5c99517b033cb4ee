import { expect, it } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import type { Card } from '../../src/card/index.ts';
import { renewFrom, type CheckOptions } from '../../src/check/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { components } from '../../src/copper/index.ts';

/** A photograph straight from above, 10 px/mm, of a base of 60 x 40 mm with two strips, of which the upper is cut at x = 30 mm. */
const [width, height] = [600, 400];
const isCopper = (i: number, j: number): boolean =>
  i >= 50 && i < 550 && ((j >= 100 && j < 150 && (i < 297 || i >= 303)) || (j >= 250 && j < 300));

const photo: Photo = {
  name: 'taps',
  width,
  height,
  rgba: Uint8Array.from({ length: 4 * width * height }, (_, n) => {
    const k = n >> 2;
    const rgb = isCopper(k % width, Math.floor(k / width)) ? [150, 98, 74] : [226, 224, 220];
    return n % 4 === 3 ? 255 : rgb[n % 4] + ((k * 7919) % 5);
  }),
} as Photo;

/** Nets that run over the cut, and how often they are asked. */
function blind(): CheckOptions & { asked: () => number } {
  let count = 0;
  return {
    asked: () => count,
    outline: {
      cornersPx: [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
      certainty: 1,
      k1: 0,
      residualMm: 0,
    },
    learned: async (sheet: SquaredSheet) => {
      count++;
      const none = new Uint8Array(sheet.width * sheet.height);
      const copper = none.map((_, k) => {
        const [i, j] = [k % sheet.width, Math.floor(k / sheet.width)];
        return isCopper(i, j) || (i >= 290 && i < 310 && j >= 100 && j < 150) ? 250 : 2;
      });
      return { copper, lamp: none, cell: none.slice() };
    },
  };
}

const card: Card = cardSchema.parse({ format: 'foilproof/1', base: { width_mm: 60, height_mm: 40 } });
const taught = (teach: Partial<Card['teach']>): Card => ({
  ...card,
  teach: { copper: [], paper: [], ...teach },
});

it('a tap opens a cut, is told as a gap for certain, costs no second look by the nets, and is taken back', async () => {
  const options = blind();
  const before = await renewFrom('square', { photo, card }, options);
  const count = (checked: typeof before) =>
    components(checked.mask.filled, checked.mask.width, checked.mask.height, 8).count;
  // The cut as plain as this the check may see by itself: its own opening is closed first, so that the tap has work to do.
  const closed = await renewFrom(
    'copper',
    { photo, card: taught({ copper: [[30, 12.5]] }), before },
    options,
  );
  expect(count(closed)).toBe(2);
  expect(closed.netlist.findings.filter(({ kind }) => kind === 'gap')).toEqual([]);
  const opened = await renewFrom(
    'copper',
    { photo, card: taught({ paper: [[30.3, 12.2]] }), before: closed },
    options,
  );
  expect(count(opened)).toBe(3);
  const gaps = opened.netlist.findings.filter(({ kind }) => kind === 'gap');
  expect(gaps).toHaveLength(1);
  expect(gaps[0].certainty).toBeGreaterThan(0.9);
  expect(Math.abs(gaps[0].at[0] - 30)).toBeLessThan(0.5);
  const back = await renewFrom('copper', { photo, card, before: opened }, options);
  expect(back.mask.filled).toEqual(before.mask.filled);
  expect(options.asked()).toBe(1);
});

it('sees the copper as a new check would once a lamp was laid over the cut, and costs no second look by the nets', async () => {
  const options = blind();
  const lamp = { id: 'A', plus: [28, 12.5], minus: [32, 12.5], colour: 'white', intent: 'always' };
  const lit = cardSchema.parse({ ...card, lamps: [lamp] });
  const before = await renewFrom('square', { photo, card }, options);
  const moved = await renewFrom('net', { photo, card: lit, before }, options);
  expect(options.asked()).toBe(1);
  const back = await renewFrom('net', { photo, card, before: moved }, options);
  expect(options.asked()).toBe(1);
  const anew = await renewFrom('square', { photo, card: lit }, options);
  expect(moved.mask.filled).not.toEqual(before.mask.filled);
  expect(moved.mask.filled).toEqual(anew.mask.filled);
  expect(moved.netlist).toEqual(anew.netlist);
  expect(back.mask.filled).toEqual(before.mask.filled);
});
