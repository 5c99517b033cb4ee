import { expect, test } from 'vitest';
import { components, sizesOf } from '../../src/copper/components.ts';
import { eulerNumber, eulerShapes } from '../references/eulerNumbers.ts';
import { seeded } from '../trace/creasedStrip.ts';
import { cv, matOf } from './openCvWasm.ts';

const read = (rows: string) => {
  const lines = rows.split('/');
  const mask = Uint8Array.from(lines.join(''), (c) => (c === '#' ? 1 : 0));
  return { mask, width: lines[0].length, height: lines.length };
};

test.each(eulerShapes)('$name: regions and Euler number, Gray 1971', ({ rows, n4, n8, e4, e8 }) => {
  const { mask, width, height } = read(rows);
  expect(components(mask, width, height, 4).count).toBe(n4);
  expect(components(mask, width, height, 8).count).toBe(n8);
  expect(eulerNumber(mask, width, height, 4)).toBe(e4);
  expect(eulerNumber(mask, width, height, 8)).toBe(e8);
});

test('60 random masks label as an independent library does (OpenCV 4.3, connectedComponents)', () => {
  const random = seeded(7);
  for (let n = 0; n < 60; n++) {
    const width = 3 + Math.floor(60 * random());
    const height = 3 + Math.floor(40 * random());
    const dense = 0.3 + 0.5 * random();
    const mask = Uint8Array.from({ length: width * height }, () => (random() < dense ? 1 : 0));
    const mat = matOf(mask, width, height);
    for (const neighbours of [4, 8] as const) {
      const theirs = new cv.Mat();
      const count = cv.connectedComponents(mat, theirs, neighbours, cv.CV_32S);
      const ours = components(mask, width, height, neighbours);
      expect(ours.count).toBe(count - 1);
      const pairs = new Set<string>();
      for (let k = 0; k < mask.length; k++) pairs.add(`${ours.labels[k]} ${theirs.data32S[k]}`);
      expect(pairs.size).toBe(ours.count + (mask.includes(0) ? 1 : 0));
      expect(sizesOf(ours).reduce((a, b) => a + b, 0)).toBe(mask.length);
      theirs.delete();
    }
    mat.delete();
  }
});

test('components less holes is the Euler number (copper by sides, paper by corners)', () => {
  const random = seeded(11);
  for (let n = 0; n < 40; n++) {
    const [width, height] = [24, 18];
    const mask = Uint8Array.from({ length: width * height }, (_, k) => {
      const [i, j] = [k % width, Math.floor(k / width)];
      const rim = i === 0 || j === 0 || i === width - 1 || j === height - 1;
      return !rim && random() < 0.6 ? 1 : 0;
    });
    const paper = mask.map((m) => 1 - m);
    const holes = components(paper, width, height, 8).count - 1;
    expect(components(mask, width, height, 4).count - holes).toBe(eulerNumber(mask, width, height, 4));
  }
});
