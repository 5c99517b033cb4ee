import { Matrix, SVD } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { cardFrom } from '../../src/card/index.ts';
import type { CopperMask } from '../../src/copper/index.ts';
import type { Homography, Point } from '../../src/geometry/index.ts';
import { isCopper } from '../../src/check/sheets/acrossFold.ts';
import { joinSheets } from '../../src/check/sheets/join.ts';
import { matchCopper } from '../../src/check/sheets/matchCopper.ts';
import { patchSeams } from '../../src/check/sheets/patchSeams.ts';
import { register } from '../../src/check/sheets/register.ts';
import { apply, fitPairs, inverse, ontoSegment, still } from '../../src/check/sheets/rigid.ts';
import type { ReadSheet } from '../../src/check/sheets/types.ts';
import { sheetFindings } from '../../src/check/sheets/index.ts';
import { sayFinding } from '../../src/record/sayFinding.ts';
import { seeded } from '../trace/creasedStrip.ts';

const size = { width: 80, height: 60 };
const pxPerMm = 5;

/** A mask of 80 x 60 mm, or another size, with copper where told. */
function maskOf(hasCopper: (p: Point) => boolean, baseMm = size): CopperMask {
  const [width, height] = [baseMm.width * pxPerMm, baseMm.height * pxPerMm];
  const filled = new Uint8Array(width * height);
  for (let k = 0; k < filled.length; k++) {
    const p: Point = [((k % width) + 0.5) / pxPerMm, (Math.floor(k / width) + 0.5) / pxPerMm];
    if (hasCopper(p)) filled[k] = 1;
  }
  const frame = { width, height, pxPerMm, originMm: [0, 0] as const, baseMm };
  const likelihood = filled.map((on) => 255 * on);
  return { ...frame, filled, strict: filled, likelihood, readable: 1, troubles: [], by: 'given' };
}

const within = (x0: number, y0: number, x1: number, y1: number) => (p: Point) =>
  p[0] > x0 && p[0] < x1 && p[1] > y0 && p[1] < y1;
const any =
  (...parts: ((p: Point) => boolean)[]) =>
  (p: Point) =>
    parts.some((part) => part(p));
const rails = any(within(8, 8, 13, 50), within(8, 8, 70, 12), within(40, 20, 44, 45));

const readOf = (seen: CopperMask, given: ReadSheet['given']): ReadSheet => ({
  given,
  seen,
  outline: {
    cornersPx: [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    certainty: 1,
    k1: 0,
    residualMm: 0,
  },
  sheet: { ...seen, rgb: new Uint8Array(0), toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1], photoPxPerMm: pxPerMm },
});
const base = { name: 'before.jpg', sheet: 'base' };
const bare = (more: object = {}) =>
  cardFrom({ format: 'foilproof/1', base: { width_mm: 80, height_mm: 60 }, ...more }, 'sheets');

describe('rigid motions', () => {
  // Reference: Kabsch's solution by the singular value decomposition of ml-matrix.
  it('fit pairs of places as the singular value decomposition does, to 1e-9 mm', () => {
    const random = seeded(5);
    for (let n = 0; n < 200; n++) {
      const pairs = Array.from({ length: 12 }, () => {
        const p: Point = [80 * random(), 60 * random()];
        return [
          p,
          [p[0] * 0.9 - p[1] * 0.3 + random(), p[0] * 0.3 + p[1] * 0.9 + random()] as Point,
        ] as const;
      });
      const own = fitPairs(pairs);
      const mean = (of: 0 | 1, axis: 0 | 1) =>
        pairs.reduce((s, pair) => s + pair[of][axis], 0) / pairs.length;
      const rows = (of: 0 | 1) =>
        new Matrix(pairs.map((pair) => [pair[of][0] - mean(of, 0), pair[of][1] - mean(of, 1)]));
      const { leftSingularVectors: u, rightSingularVectors: v } = new SVD(rows(0).transpose().mmul(rows(1)));
      const turn = v.mmul(u.transpose());
      expect(Math.abs(turn.get(0, 0) - own.c)).toBeLessThan(1e-9);
      expect(Math.abs(turn.get(1, 0) - own.s)).toBeLessThan(1e-9);
    }
  });

  it('lay a fold line on a fold line, and back', () => {
    const motion = ontoSegment(
      [
        [0, 0],
        [50, 0],
      ],
      [
        [80, 5],
        [80, 55],
      ],
    );
    const p = apply(motion, [10, 4]);
    expect(p[0]).toBeCloseTo(76, 9);
    expect(p[1]).toBeCloseTo(15, 9);
    const back = apply(inverse(motion), p);
    expect(Math.hypot(back[0] - 10, back[1] - 4)).toBeLessThan(1e-9);
  });
});

describe('laying one photograph of the base on another', () => {
  it('finds how far copper was moved and turned', () => {
    const turn = (1.2 * Math.PI) / 180;
    const motion = { c: Math.cos(turn), s: Math.sin(turn), dx: 0.9, dy: -0.7 };
    const moved = maskOf((p) => rails(apply(motion, p)));
    const match = matchCopper(moved, maskOf(rails), still, () => true)!;
    for (const p of [
      [10, 10],
      [70, 50],
    ] as Point[]) {
      const [x, y] = apply(match.best.toBase, p);
      const [u, v] = apply(motion, p);
      expect(Math.hypot(x - u, y - v)).toBeLessThan(0.1);
    }
    expect(match.best.residualMm).toBeLessThan(0.15);
  });

  it('keeps to the corners where they fit, turns a sheet that lies upside down', () => {
    const now = maskOf(rails);
    expect(register(readOf(now, base), now, bare()).by).toBe('corners');
    const over = register(
      readOf(
        maskOf(([x, y]) => rails([80 - x, 60 - y])),
        base,
      ),
      now,
      bare(),
    );
    expect(over.by).toBe('copper');
    expect(over.residualMm).toBeLessThan(0.1);
  });

  it('asks where what both show lies more than 1 mm apart', () => {
    const other = maskOf(any(within(20, 30, 60, 34), within(60, 2, 64, 30)));
    const { by, residualMm, at } = register(readOf(other, base), maskOf(rails), bare());
    const { cornersPx } = readOf(other, base).outline;
    const how = { by, residualMm, at, cornersPx, outlineCertainty: 1, readable: 1 };
    const fate = { name: 'before.jpg', sheet: 'base', ...how };
    const joined = { fates: [fate], beneath: {}, seams: [], flaps: [], wrongSide: [] };
    const [said, ...more] = sheetFindings(joined, bare());
    expect(more).toEqual([]);
    expect(said).toMatchObject({ kind: 'off-register', weight: 'check' });
    expect(sayFinding(said).say).toContain('before.jpg');
    expect(sheetFindings({ ...joined, fates: [{ ...fate, residualMm: 0.9 }] }, bare())).toEqual([]);
  });

  it('tells by strips over the fold how far a flap lies off along it', () => {
    const card = bare({
      flaps: [
        {
          id: 'F1',
          fold: [
            [0, 60],
            [80, 60],
          ],
          outline: [
            [0, 60],
            [80, 60],
            [80, 100],
            [0, 100],
          ],
        },
      ],
    });
    const now = maskOf(within(30, 20, 34, 61));
    const given = {
      name: 'flap.jpg',
      sheet: 'F1',
      fold: [
        [0, 0],
        [80, 0],
      ] as [[number, number], [number, number]],
    };
    const at = (shift: number) =>
      register(readOf(maskOf(within(30 + shift, -1, 34 + shift, 20)), given), now, card);
    expect(at(0)).toMatchObject({ by: 'fold' });
    expect(at(0).residualMm).toBeLessThan(0.15);
    expect(Math.abs(at(1.6).residualMm - 1.6)).toBeLessThan(0.15);
  });
});

describe('the inside of a folded base, opened flat', () => {
  /** The base is hinged along its foot to a flap as large as itself; the photograph shows both, turned by a half. */
  const fold: [[number, number], [number, number]] = [
    [0, 60],
    [80, 60],
  ];
  const card = bare({
    flaps: [
      {
        id: 'F1',
        fold,
        outline: [
          [0, 60],
          [80, 60],
          [80, 120],
          [0, 120],
        ],
      },
    ],
  });
  const onFlap = within(20, 70, 24, 100);
  const given = {
    name: 'inside.jpg',
    sheet: 'base',
    fold_of: 'F1',
    size_mm: [80, 120] as [number, number],
    // Turned by a half the fold's first end lies on the right.
    fold: [
      [80, 60],
      [0, 60],
    ] as [[number, number], [number, number]],
  };
  const spread = maskOf(([x, y]) => any(rails, onFlap)([80 - x, 120 - y]), { width: 80, height: 120 });

  it('is laid by its fold line, within 0.1 mm of the copper that both photographs show', () => {
    const { by, toBase, residualMm } = register(readOf(spread, given), maskOf(rails), card);
    expect(by).toBe('fold');
    expect(residualMm).toBeLessThan(0.15);
    // By hand: a half turn about the middle of the fold.
    const [x, y] = apply(toBase, [10, 20]);
    expect(Math.hypot(x - 70, y - 100)).toBeLessThan(1e-9);
  });

  it('gives the flap its copper, where it lies beyond the fold, and leaves the base its own photograph', () => {
    const seen = maskOf(rails);
    const sheet = { ...seen, rgb: new Uint8Array(3 * seen.filled.length) };
    const picture = {
      ...sheet,
      toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1] as Homography,
      photoPxPerMm: pxPerMm,
    };
    const read = readOf(spread, given);
    const bright = { ...read.sheet, rgb: new Uint8Array(3 * spread.filled.length).fill(200) };
    const laid = joinSheets({ sheet: picture, seen }, [{ ...read, sheet: bright }], card);
    expect(laid.joined).toMatchObject({ flaps: ['F1'], wrongSide: [] });
    expect(laid.joined.fates).toMatchObject([{ name: 'inside.jpg', sheet: 'F1', by: 'fold' }]);
    for (let y = 0.5; y < 120; y += 1)
      for (let x = 0.5; x < 80; x += 1) {
        const wanted = y < 60 ? rails([x, y]) : onFlap([x, y]);
        expect(isCopper(laid.seen, [x, y]), `${x}, ${y}`).toBe(wanted);
      }
  });

  it('is put right by the copper where its fold line is given 2 mm beside the fold', () => {
    const beside = { ...given, fold: given.fold.map(([x, y]) => [x, y + 2]) as typeof given.fold };
    const { by, toBase } = register(readOf(spread, beside), maskOf(rails), card);
    // Masks of a fifth of a millimetre, matched 60 mm away.
    expect(by).toBe('copper');
    const [x, y] = apply(toBase, [10, 20]);
    expect(Math.hypot(x - 70, y - 100)).toBeLessThan(0.5);
  });
});

describe('tape that came with a patch', () => {
  const rail = within(60, 5, 65, 55);
  const beneath = within(30, 5, 35, 55);
  const patch = {
    id: 'K1',
    outline: [
      [26, 20],
      [40, 20],
      [40, 40],
      [26, 40],
    ] as [number, number][],
    strips: [],
    beneath: [],
  };
  const seamsWith = (tape: (p: Point) => boolean) => {
    const before = maskOf(any(rail, beneath));
    const covered = (p: Point) => beneath(p) && !within(26, 20, 40, 40)(p);
    const now = maskOf(any(rail, covered, tape));
    const registration = { by: 'corners' as const, toBase: still, residualMm: 0, at: [0, 0] as const };
    return patchSeams(now, { read: readOf(before, base), registration }, patch);
  };

  it('is a seam where it runs off the patch onto copper', () => {
    const seams = seamsWith(within(28, 28, 63, 32));
    expect(seams).toHaveLength(1);
    expect(Math.hypot(seams[0][0] - 60, seams[0][1] - 30)).toBeLessThan(1);
  });

  it('joins nothing where it ends on paper', () => {
    expect(seamsWith(within(28, 28, 55, 32))).toEqual([]);
  });
});
