import { expect, it } from 'vitest';
import { mouthsOf } from '../../src/copper/cuts/mouths.ts';
import type { Window } from '../../src/copper/cuts/window.ts';

const reach = 40;
const rows = 2 * reach + 1;
/** Tenths of a millimetre across: five samples of paper, seven of the strip, five of paper. */
const columns = Float32Array.from([-42, -39, -36, -33, -30, -24, -16, -8, 0, 8, 16, 24, 30, 33, 36, 39, 42]);
const [from, to] = [5, 12];

/** L*, a*, b* of cream paper and of a pale blue wire, from memory. */
const cream = [88, 2, 22];
const wire = [82, -8, -18];

/** A strip on cream paper; from one row to another something of another colour lies over it and the paper. */
function crossed(first: number, last: number, colour: readonly number[]): Window {
  const [L, a, b] = cream.map((_, plane) =>
    Float32Array.from({ length: rows * columns.length }, (_, k) => {
      const row = Math.floor(k / columns.length);
      return row >= first && row <= last ? colour[plane] : cream[plane];
    }),
  );
  const copper = Uint8Array.from({ length: rows * columns.length }, (_, k) => {
    const column = k % columns.length;
    return column >= from && column < to ? 1 : 0;
  });
  return { reach, rows, columns, from, to, L, a, b, chance: copper.map((on) => 250 * on), copper };
}

it('A broad wire beside a strip does not pass for its paper', () => {
  const mouths = mouthsOf(crossed(32, 48, wire));
  for (const side of [0, 1] as const) expect(mouths(40, side)).toMatchObject({ L: 88, a: 2, b: 22 });
});

it('Paper that is only in shade there is taken as it is', () => {
  const mouths = mouthsOf(crossed(32, 48, [70, 2, 18]));
  expect(mouths(40, 0)).toMatchObject({ L: 70, a: 2, b: 18 });
});
