import { describe, expect, it } from 'vitest';
import { scoreFindings } from './findingScore.ts';
import type { Said } from './findingScore.ts';
import { boundaryF, iou, regions, within } from './maskScore.ts';
import type { Binary } from './maskScore.ts';
import { perKind } from './tables.ts';

const square = (from: number, to: number): Binary => {
  const data = new Uint8Array(40 * 40);
  for (let j = from; j < to; j++) for (let i = from; i < to; i++) data[j * 40 + i] = 1;
  return { width: 40, height: 40, data };
};

describe('Mask scores', () => {
  it('IoU of a square and itself moved: |A and B| / |A or B| (Jaccard 1901)', () => {
    expect(iou(square(10, 20), square(10, 20))).toBe(1);
    expect(iou(square(10, 20), square(15, 25))).toBeCloseTo(25 / 175, 12);
  });

  it('boundaries met within the radius count fully, beyond it not at all', () => {
    expect(boundaryF(square(10, 20), square(12, 22), 3)).toBe(1);
    expect(boundaryF(square(2, 8), square(25, 35), 3)).toBe(0);
  });

  it('counts regions joined by corners as one, and leaves specks out', () => {
    const two = square(5, 10);
    for (let i = 10; i < 15; i++) for (let j = 10; j < 15; j++) two.data[j * 40 + i] = 1;
    two.data[39] = 1;
    expect(regions(two, 4)).toBe(1);
    expect(regions(two, 1)).toBe(2);
  });

  it('what covers a piece right across parts it wherever it is asked, and what does not, does not', () => {
    const bare = new Uint8Array(40 * 40).fill(1);
    const crossed = bare.map((_, k) => (k % 40 === 15 ? 0 : 1));
    const touched = bare.map((_, k) => (k % 40 === 15 && k < 14 * 40 ? 0 : 1));
    expect(regions(within(square(10, 20), crossed), 4)).toBe(2);
    expect(regions(within(square(10, 20), touched), 4)).toBe(1);
    expect(regions(within(square(10, 20)), 4)).toBe(1);
  });
});

describe('Finding scores', () => {
  const said = (kind: Said['kind'], x: number, certainty = 0.9): Said => {
    return { kind, at: [x, 0], certainty, holds: true };
  };

  it('a finding counts once, of its own kind, within 3 mm', () => {
    const faults = [{ kind: 'gap' as const, path: [[0, 0]] as [number, number][], sizeMm: 1 }];
    const { kinds } = scoreFindings([said('gap', 2.9), said('gap', 1), said('gap', 20)], faults, []);
    expect(kinds).toEqual([{ kind: 'gap', found: 1, missed: 0, falsely: 1 }]);
  });

  it('precision is told of all that is named, and again without the places to look at', () => {
    const gap = (x: number, certainty: number): Said => ({ kind: 'gap', at: [x, 0], certainty, holds: certainty >= 0.5 }); // prettier-ignore
    const findings = scoreFindings(
      [gap(0, 0.9), gap(20, 0.8), gap(40, 0.3), gap(60, 0.2)],
      [{ kind: 'gap', path: [[0, 0]] }],
      [],
    );
    const row = { name: 'drawn', mode: 'true corners' as const, conditions: {}, findings };
    expect(perKind([row])).toBe(
      `${'gap'.padEnd(18)}recall 1.00 (1/1)  precision 0.25 (3 false), at 0.5 and up 0.50 (1 false)`,
    );
  });

  it('what a true fault of another kind explains is no false alarm', () => {
    const path: [number, number][] = [
      [0, 0],
      [30, 0],
    ];
    const { kinds, missed } = scoreFindings([said('gap', 15)], [{ kind: 'missing-strip', path }], []);
    expect(kinds).toEqual([{ kind: 'missing-strip', found: 0, missed: 1, falsely: 0 }]);
    expect(missed).toHaveLength(1);
  });

  it('a shorted cell is no false alarm where strips of both nets truly lie under it; elsewhere it is', () => {
    const under = [{ kind: 'shorted-cell' as const, path: [[50, 0]] as [number, number][] }];
    expect(scoreFindings([said('shorted-cell', 57)], [], under).judged).toEqual([]);
    expect(scoreFindings([said('shorted-cell', 57)], [], []).kinds[0].falsely).toBe(1);
    expect(scoreFindings([said('gap', 57)], [], under).kinds[0].falsely).toBe(1);
  });
});
