import { threshold, Image } from 'image-js';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { otsu } from '../../../src/plan/compare/otsu.ts';
import { signedDistance } from '../../../src/plan/compare/signedDistance.ts';
import { solvePositive } from '../../../src/plan/compare/solvePositive.ts';
import { seeded } from './drawPair.ts';

describe('signedDistance', () => {
  it('is the plain Euclidean distance to the nearest pixel of the other side, less half a pixel', () => {
    const width = 40;
    const random = seeded(3);
    const on = Uint8Array.from({ length: width * width }, () => (random() < 0.02 ? 1 : 0));
    const field = signedDistance({ width, height: width, on }, 60);
    for (let k = 0; k < on.length; k++) {
      let nearest = Infinity;
      for (let n = 0; n < on.length; n++) {
        if (on[n] === on[k]) continue;
        nearest = Math.min(
          nearest,
          Math.hypot((k % width) - (n % width), Math.floor(k / width) - Math.floor(n / width)),
        );
      }
      expect(field[k]).toBeCloseTo((nearest - 0.5) * (on[k] ? -1 : 1), 4);
    }
  });

  it('is negative inside, half a pixel at both sides of an edge, and never past the farthest', () => {
    const on = Uint8Array.from({ length: 30 }, (_, x) => (x < 15 ? 1 : 0));
    const field = signedDistance({ width: 30, height: 1, on }, 6);
    expect([...field.slice(13, 17)]).toEqual([-1.5, -0.5, 0.5, 1.5]);
    expect(Math.max(...field)).toBe(6);
  });
});

it('otsu agrees with image-js on a noisy two-humped picture', () => {
  const random = seeded(5);
  const hump = (mid: number) => Math.max(0, Math.min(255, Math.round(mid + 30 * (random() + random() - 1))));
  const grey = Uint8Array.from({ length: 64 * 64 }, (_, k) => hump(k % 3 ? 190 : 70));
  const image = new Image(64, 64, { data: grey, colorModel: 'GREY' });
  const theirs = threshold(image, { algorithm: 'otsu' }).getRawImage().data;
  const ours = otsu(grey);
  for (let k = 0; k < grey.length; k++) expect(grey[k] > ours).toBe(theirs[k] !== 0);
});

it('solvePositive agrees with ml-matrix on band matrices', () => {
  const random = seeded(9);
  const n = 24;
  const band = 5;
  const A = Matrix.zeros(n, n);
  for (let i = 0; i < n; i++) {
    for (let j = Math.max(0, i - band); j < i; j++) {
      const v = random() - 0.5;
      A.set(i, j, v);
      A.set(j, i, v);
    }
    A.set(i, i, 8);
  }
  const b = Array.from({ length: n }, () => random());
  const theirs = new CholeskyDecomposition(A).solve(Matrix.columnVector(b)).to1DArray();
  const ours = solvePositive(Float64Array.from(A.to1DArray()), Float64Array.from(b), n, band);
  theirs.forEach((v, i) => expect(ours[i]).toBeCloseTo(v, 10));
});
