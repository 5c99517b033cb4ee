import { describe, expect, it } from 'vitest';
import type { Quad } from '../../src/geometry/index.ts';
import { mapBorder } from '../../src/sheet/outline/baseMap.ts';
import type { WorkPicture } from '../../src/sheet/outline/work.ts';

/** A map that sees the base from a quarter to three quarters of the picture, both ways. */
const side = 80;
const prob = Float32Array.from({ length: side * side }, (_, k) =>
  Number([k % side, Math.floor(k / side)].every((v) => v >= side / 4 && v < (3 * side) / 4)),
);
const map = { width: side, height: side, prob };
const work: WorkPicture = {
  width: 400,
  height: 400,
  step: 1,
  planes: [new Float32Array(0), new Float32Array(0), new Float32Array(0)],
};
const figure = (right: number): Quad => [
  [100, 100],
  [right, 100],
  [right, 300],
  [100, 300],
];

describe('mapBorder', () => {
  it('is 1 at every side of the base', () => {
    for (const clear of mapBorder(map, figure(300), work)) expect(clear).toBeCloseTo(1, 5);
  });

  it('tells the one side past which the base goes on, and the one that lies beyond it', () => {
    expect(mapBorder(map, figure(260), work)[0]).toBeLessThan(0.05);
    expect(mapBorder(map, figure(340), work)[0]).toBeLessThan(0.05);
    expect(mapBorder(map, figure(340), work)[1]).toBeGreaterThan(0.8);
  });
});
