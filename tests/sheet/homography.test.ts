import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import type { Point, Quad } from '../../src/geometry/index.ts';
import {
  applyHomography,
  composeHomographies,
  homographyFromQuad,
  invertHomography,
  scaleAt,
  turnCorners,
} from '../../src/sheet/index.ts';
import { randomFrom } from '../generate/random.ts';
import { homographyExamples } from '../references/homography.ts';

const corners = (w: number, h: number): Quad => [
  [0, 0],
  [w, 0],
  [w, h],
  [0, h],
];

/** A convex quadrilateral of some 1000 px about. */
function someQuad(seed: number): Quad {
  const r = randomFrom(seed);
  const off = () => r.between(-140, 140);
  return corners(1200, 900).map(([x, y]) => [x + off(), y + off()]) as unknown as Quad;
}

describe('homographyFromQuad', () => {
  it.each(homographyExamples)('gives the published construction: $name (Heckbert 1989)', (example) => {
    const m = homographyFromQuad(example.quad, example.size);
    m.forEach((v, i) => expect(v).toBeCloseTo(example.matrix[i], 9 - Math.ceil(Math.log10(1 + Math.abs(v)))));
  });

  it('takes the centre of the unit square to (17/6, 31/9) in the first example', () => {
    const [x, y] = applyHomography(
      homographyFromQuad(homographyExamples[0].quad, { width: 1, height: 1 }),
      [0.5, 0.5],
    );
    expect(x).toBeCloseTo(17 / 6, 12);
    expect(y).toBeCloseTo(31 / 9, 12);
  });

  it('agrees with getPerspectiveTransform of opencv-wasm 4.3, an independent build', () => {
    const { cv } = createRequire(import.meta.url)('opencv-wasm') as { cv: OldCv };
    for (let seed = 1; seed <= 20; seed++) {
      const quad = someQuad(seed);
      const from = cv.matFromArray(4, 1, cv.CV_32FC2, corners(105, 148).flat());
      const to = cv.matFromArray(4, 1, cv.CV_32FC2, quad.flat());
      const theirs = cv.getPerspectiveTransform(from, to);
      const ours = homographyFromQuad(quad, { width: 105, height: 148 });
      for (const p of [
        [0, 0],
        [52, 74],
        [105, 20],
        [-20, 160],
      ] as Point[]) {
        const a = applyHomography(ours, p);
        const b = applyHomography(Array.from(theirs.data64F) as never, p);
        expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(0.01);
      }
      for (const m of [from, to, theirs]) m.delete();
    }
  });

  it('has an inverse and composes', () => {
    for (let seed = 30; seed < 50; seed++) {
      const m = homographyFromQuad(someQuad(seed), { width: 105, height: 148 });
      const unit = composeHomographies(m, invertHomography(m));
      [1, 0, 0, 0, 1, 0, 0, 0, 1].forEach((v, i) => expect(unit[i]).toBeCloseTo(v, 6));
    }
  });

  it('keeps its map when the corners are turned with the sheet', () => {
    const quad = someQuad(7);
    const upright = homographyFromQuad(quad, { width: 105, height: 148 });
    const turned = homographyFromQuad(turnCorners(quad, 1), { width: 148, height: 105 });
    const a = applyHomography(upright, [20, 30]);
    const b = applyHomography(turned, [30, 105 - 20]);
    expect(b[0]).toBeCloseTo(a[0], 8);
    expect(b[1]).toBeCloseTo(a[1], 8);
  });

  it('tells the scale of a plain enlargement', () => {
    const m = homographyFromQuad(corners(1050, 1480), { width: 105, height: 148 });
    expect(scaleAt(m, [50, 50])).toBeCloseTo(10, 10);
  });
});

interface OldMat {
  data64F: Float64Array;
  delete(): void;
}
interface OldCv {
  CV_32FC2: number;
  matFromArray(rows: number, columns: number, type: number, data: number[]): OldMat;
  getPerspectiveTransform(from: OldMat, to: OldMat): OldMat;
}
