import { describe, expect, it } from 'vitest';
import type { CopperMask } from '../../src/copper/index.ts';
import { faintJoins } from '../../src/trace/faint.ts';
import { labelPieces } from '../../src/trace/label.ts';

const [width, height, pxPerMm] = [300, 200, 10];

/** Two upright strips 10 mm apart, and what else is likely copper: [x0, y0, x1, y1, likelihood], px. */
function sheet(...lines: [number, number, number, number, number][]) {
  const likelihood = new Uint8Array(width * height);
  const fill = (x0: number, y0: number, x1: number, y1: number, value: number) => {
    for (let j = y0; j < y1; j++) likelihood.fill(value, j * width + x0, j * width + x1);
  };
  for (const line of lines) fill(...line);
  fill(50, 10, 100, 190, 255);
  fill(200, 10, 250, 190, 255);
  const filled = likelihood.map((v) => (v > 127 ? 1 : 0));
  const mask = {
    ...{ width, height, pxPerMm, filled, strict: filled, likelihood, originMm: [0, 0] as [number, number] },
    ...{ baseMm: { width: 30, height: 20 }, readable: 1, troubles: [], by: 'learned' as const },
  } satisfies CopperMask;
  return faintJoins(labelPieces(filled, width, height, 100).labels, mask);
}

describe('Faint lines from strip to strip', () => {
  it('are told with their ends, length and width', () => {
    const [line, ...others] = sheet([100, 98, 200, 104, 50]);
    expect(others).toEqual([]);
    expect(line.mm).toBeCloseTo(10, 0);
    expect(line.widthMm).toBeCloseTo(0.6, 1);
    expect(line.chance).toBeCloseTo(50 / 255, 2);
    expect([line.atA[0], line.atB[0]].sort((a, b) => a - b)[0]).toBeCloseTo(10, 0);
    expect(line.atA[1]).toBeCloseTo(10, 0);
  });

  it('are told once when one level of likelihood has them whole and another in parts', () => {
    expect(sheet([100, 98, 140, 104, 50], [140, 98, 160, 104, 18], [160, 98, 200, 104, 50])).toHaveLength(1);
    expect(sheet([100, 90, 200, 112, 18], [100, 98, 200, 104, 50])).toHaveLength(1);
  });

  it('are none where they stop short, where the paper is as pale, where a stain is broad, or round a strip', () => {
    expect(sheet([100, 98, 180, 104, 50])).toEqual([]);
    expect(sheet([100, 98, 200, 104, 10])).toEqual([]);
    expect(sheet([100, 60, 200, 140, 50])).toEqual([]);
    expect(sheet([97, 8, 103, 192, 60])).toEqual([]);
  });
});
