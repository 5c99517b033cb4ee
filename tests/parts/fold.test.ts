import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { mirrorAbout, type Point } from '../../src/geometry/index.ts';
import { closeMap } from '../../src/parts/index.ts';
import { seeded } from '../trace/creasedStrip.ts';

/** Reference: the Householder matrix I - 2 n n^T / (n^T n) of ml-matrix, about a point of the line. */
function byMatrix([a, b]: readonly [Point, Point], p: Point): Point {
  const n = Matrix.columnVector([-(b[1] - a[1]), b[0] - a[0]]);
  const norm = n.transpose().mmul(n).get(0, 0);
  const mirror = Matrix.eye(2).sub(n.mmul(n.transpose()).mul(2 / norm));
  const image = mirror.mmul(Matrix.columnVector([p[0] - a[0], p[1] - a[1]]));
  return [a[0] + image.get(0, 0), a[1] + image.get(1, 0)];
}

describe('closing a flap', () => {
  it('mirrors as the Householder matrix does, to 1e-9 mm, over 2,000 folds', () => {
    const random = seeded(11);
    const at = (): Point => [random() * 400 - 100, random() * 400 - 100];
    for (let n = 0; n < 2000; n++) {
      const fold = [at(), at()] as const;
      const p = at();
      const [x, y] = mirrorAbout(fold)(p);
      const [u, v] = byMatrix(fold, p);
      expect(Math.hypot(x - u, y - v)).toBeLessThan(1e-9);
    }
  });

  it('comes back when it is opened again, and leaves the fold where it is', () => {
    const random = seeded(12);
    const at = (): Point => [random() * 100, random() * 100];
    for (let n = 0; n < 200; n++) {
      const fold: [Point, Point] = [at(), at()];

      const close = mirrorAbout(fold);
      const p = at();
      const back = close(close(p));
      expect(Math.hypot(back[0] - p[0], back[1] - p[1])).toBeLessThan(1e-9);
      expect(Math.hypot(close(fold[0])[0] - fold[0][0], close(fold[0])[1] - fold[0][1])).toBeLessThan(1e-9);
    }
  });

  it('is off by 1.05 mm at 60 mm for a flap turned by 1 degree (chord 2 r sin(t / 2))', () => {
    const fold: [Point, Point] = [
      [0, -50],
      [0, 50],
    ];
    const p: Point = [-60, 0];
    const exact = closeMap({ fold })(p);
    const turned = closeMap({ fold }, { shiftMm: 0, turnDeg: 1 })(p);
    const off = Math.hypot(turned[0] - exact[0], turned[1] - exact[1]);
    expect(off).toBeCloseTo(2 * 60 * Math.sin(Math.PI / 360), 9);
    expect(off).toBeCloseTo(1.05, 2);
  });

  it('is off by the shift of its fold line', () => {
    const fold: [Point, Point] = [
      [0, 0],
      [100, 0],
    ];
    const [x, y] = closeMap({ fold }, { shiftMm: 0.5, turnDeg: 0 })([30, -20]);
    expect([x, y]).toEqual([30, 20.5]);
  });
});
