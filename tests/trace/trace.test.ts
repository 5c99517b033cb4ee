import { expect, test } from 'vitest';
import { trace } from '../../src/trace/index.ts';
import type { Traced } from '../../src/trace/index.ts';
import { eulerNumber } from '../references/eulerNumbers.ts';
import { seeded } from './creasedStrip.ts';
import { given, maskOf, mirrored, turned } from './masks.ts';

/** A comb: a rail of 5 mm with three teeth of 3 mm, and a strip by itself 1.3 mm under the first tooth. */
const comb = maskOf(60, 50, [
  [5, 5, 55, 10],
  [8, 10, 11, 30],
  [28, 10, 31, 30],
  [48, 10, 51, 30],
  [8, 31.3, 11, 45],
]);

const topology = ({ pieces, clearances }: Traced) => ({
  pieces: pieces
    .map(({ lines, ends, areaMm2, outline }) => [
      lines.length,
      ends.length,
      Math.round(areaMm2),
      outline.holes.length,
    ])
    .sort(),
  clearances: clearances.map(({ mm }) => mm.toFixed(1)).sort(),
});

test('a comb: two pieces, their areas, widths, ends and the gap between them', () => {
  const { pieces, clearances } = trace(comb);
  expect(pieces.map(({ areaMm2 }) => areaMm2)).toEqual([
    expect.closeTo(50 * 5 + 3 * 20 * 3, 5),
    expect.closeTo(3 * 13.7, 5),
  ]);
  const [rail, strip] = pieces;
  expect(rail.ends).toHaveLength(3);
  expect(rail.lines).toHaveLength(3);
  expect(strip.widthMm).toBeCloseTo(3, 0);
  expect(strip.ends).toHaveLength(2);
  const tops = strip.ends.map(({ at }) => at[1]).sort((a, b) => a - b);
  expect(tops[0]).toBeCloseTo(31.3, 0);
  expect(tops[1]).toBeCloseTo(45, 0);
  for (const { at, out } of strip.ends) {
    expect(Math.abs(out[1])).toBeGreaterThan(0.98);
    expect(at[0]).toBeCloseTo(9.5, 0);
  }
  expect(clearances).toHaveLength(1);
  expect(clearances[0].mm).toBeCloseTo(1.3, 5);
});

test('any turn or mirror of the mask gives the same topology', () => {
  const expected = topology(trace(comb));
  let view = comb;
  for (let quarter = 0; quarter < 3; quarter++) {
    view = turned(view);
    expect(topology(trace(view))).toEqual(expected);
  }
  expect(topology(trace(mirrored(comb)))).toEqual(expected);
});

test('copper that touches by a corner only stays two pieces', () => {
  const { pieces } = trace(
    maskOf(30, 30, [
      [5, 5, 15, 15],
      [15, 15, 25, 25],
    ]),
  );
  expect(pieces).toHaveLength(2);
});

test('adding copper never splits a piece', () => {
  const random = seeded(5);
  let mask = comb;
  let before = trace(mask);
  for (let n = 0; n < 12; n++) {
    const [x, y] = [2 + 50 * random(), 2 + 40 * random()];
    const more = maskOf(60, 50, [[x, y, x + 1 + 5 * random(), y + 1 + 5 * random()]]);
    mask = given(
      mask.filled.map((v, k) => v | more.filled[k]),
      mask.width,
      mask.height,
    );
    const after = trace(mask);
    const now = new Map<number, number>();
    let split = 0;
    before.labels.forEach((id, k) => {
      if (!id) return;
      const other = now.get(id) ?? after.labels[k];
      if (after.labels[k] !== other) split++;
      now.set(id, other);
    });
    expect(split).toBe(0);
    before = after;
  }
});

test('pieces less the holes of their outlines are the Euler number of the mask, Gray 1971', () => {
  const random = seeded(6);
  for (let n = 0; n < 8; n++) {
    const boxes = Array.from({ length: 14 }, () => {
      const [x, y] = [2 + 30 * random(), 2 + 30 * random()];
      const flat = random() < 0.5;
      return [x, y, x + (flat ? 16 : 2), y + (flat ? 2 : 16)] as const;
    });
    const mask = maskOf(52, 52, boxes);
    const { pieces } = trace(mask);
    const holes = pieces.reduce((sum, { outline }) => sum + outline.holes.length, 0);
    expect(pieces.length - holes).toBe(eulerNumber(mask.filled, mask.width, mask.height, 4));
  }
});

test('the outline encloses the area of the piece (shoelace formula)', () => {
  const { pieces } = trace(
    maskOf(40, 40, [
      [5, 5, 35, 10],
      [5, 30, 35, 35],
      [5, 10, 10, 30],
      [30, 10, 35, 30],
    ]),
  );
  const area = (ring: readonly (readonly [number, number])[]): number =>
    ring.reduce((sum, [x, y], k) => {
      const [u, v] = ring[(k + 1) % ring.length];
      return sum + (x * v - u * y) / 2;
    }, 0);
  expect(pieces).toHaveLength(1);
  expect(pieces[0].outline.holes).toHaveLength(1);
  expect(Math.abs(area(pieces[0].outline.outer) - 900)).toBeLessThan(1.5);
  expect(Math.abs(area(pieces[0].outline.holes[0]) + 400)).toBeLessThan(1.5);
});

test('a nibbled strip has a neck of the width that is left', () => {
  const { necks } = trace(
    maskOf(50, 20, [
      [5, 8, 22, 13],
      [22, 9.5, 24, 11],
      [24, 8, 45, 13],
    ]),
  );
  expect(necks).toHaveLength(1);
  expect(necks[0].widthMm).toBeCloseTo(1.5, 0);
  expect(necks[0].usualMm).toBeCloseTo(5, 0);
  expect(Math.abs(necks[0].at[0] - 23)).toBeLessThan(1.2);
});

test('a sliver between two rails is a neck', () => {
  const { necks, pieces } = trace(
    maskOf(50, 30, [
      [5, 5, 45, 10],
      [5, 14, 45, 19],
      [25, 10, 25.6, 14],
    ]),
  );
  expect(pieces).toHaveLength(1);
  expect(necks).toHaveLength(1);
  expect(necks[0].widthMm).toBeLessThan(1.2);
  expect(Math.hypot(necks[0].at[0] - 25.3, necks[0].at[1] - 12)).toBeLessThan(2);
});
