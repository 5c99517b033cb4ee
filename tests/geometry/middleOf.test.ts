import { expect, test } from 'vitest';
import { middleOf } from '../../src/geometry/index.ts';
import { seeded } from '../trace/creasedStrip.ts';

test('the middle is the one that sorting puts there, of lists of any length, with many alike and in any order', () => {
  const random = seeded(23);
  for (let n = 0; n < 400; n++) {
    const levels = 1 + Math.floor(40 * random());
    const drawn = Float32Array.from({ length: 1 + (n % 90) }, () => Math.floor(levels * random()) - 7.5);
    const values = n % 5 === 0 ? drawn.sort() : n % 5 === 1 ? drawn.sort().reverse() : drawn;
    expect(middleOf(values.slice())).toBe(values.slice().sort()[values.length >> 1]);
  }
});
