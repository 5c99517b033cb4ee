import { expect, test } from 'vitest';
import { thin } from '../../src/trace/thin.ts';
import { thinned } from '../references/zhangSuen.ts';

test.each(thinned)('$name thins as Zhang and Suen 1984 have it', ({ input, skeleton }) => {
  const mask = Uint8Array.from(input.join(''), (c) => (c === '#' ? 1 : 0));
  const width = input[0].length;
  const rows = [...thin(mask, width, input.length)].map((v) => (v ? '#' : '.')).join('');
  expect(rows.match(new RegExp(`.{${width}}`, 'g'))).toEqual(skeleton);
});
