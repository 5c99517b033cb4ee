import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/geometry/index.ts';
import {
  checkFront,
  flapAlong,
  planFromTraced,
  planChecks,
  snap,
  snapAngle,
  snapCorner,
  suggestRoute,
} from '../../../src/plan/index.ts';
import type { SquaredSheet } from '../../../src/sheet/index.ts';
import { laid, planned, smallCard } from '../built/layCard.ts';

describe('snapping', () => {
  const card = smallCard();
  const strips = card.plan!.strips;

  it('goes to a pad first', () => {
    expect(snap([26, 35.5], [26, 12], 4, card, [], 2)).toMatchObject({
      at: [25, 34.5],
      by: 'pad',
      to: 'L1+',
    });
  });

  it.each([
    [
      [30, 10.8],
      [30, 10],
    ],
    [
      [19.5, 20.2],
      [19.85, 19.85],
    ],
    [
      [10.5, 30],
      [10, 30],
    ],
  ] as [Point, Point][])('turns %j onto a multiple of 45 degrees', (at, wanted) => {
    const turned = snapAngle(at, [10, 10])!;
    expect(turned[0]).toBeCloseTo(wanted[0], 1);
    expect(turned[1]).toBeCloseTo(wanted[1], 1);
  });

  it('leaves a place alone that is near nothing', () => {
    expect(snapAngle([30, 18], [10, 10])).toBeUndefined();
    expect(snap([60, 50], undefined, 4, card, strips, 2)).toEqual({ at: [60, 50], by: 'none' });
  });

  it('stops one clearance short of the strip ahead', () => {
    // The minus rail's upper edge lies at 61.5; 4 mm of tape 2 mm off it has its middle at 57.5.
    const { at, by, to } = snap([40, 57], [40, 30], 4, card, strips, 2);
    expect(by).toBe('spacing');
    expect(to).toBe('minus rail');
    expect(at[1]).toBeCloseTo(57.5, 6);
  });
});

it('a corner between two others settles where fold angles of both meet', () => {
  const card = smallCard();
  const { at, by } = snapCorner([39.2, 21.5], [10, 20], [40, 60], 4, { ...card, lamps: [] }, [], 2);
  expect(by).toBe('angle');
  expect(at).toEqual([expect.closeTo(40, 6), expect.closeTo(20, 6)]);
});

it('a flap hinges on the edge that a drag follows, and lies open beyond it', () => {
  const { fold, outline } = flapAlong(smallCard(), [2, 20.3], [1, 50.2])!;
  expect(fold).toEqual([
    [0, 20],
    [0, 50],
  ]);
  expect(Math.min(...outline.map(([x]) => x))).toBe(-30);
  expect(flapAlong(smallCard(), [2, 20], [2, 22])).toBeUndefined();
});

describe('live checks of a plan', () => {
  it('finds a crossing and proposes a patch round it, wider than the strips by 3 mm a side', () => {
    const card = smallCard();
    card.plan!.strips.push({
      id: 'x',
      net: 'plus',
      width_mm: 4,
      path: [
        [85, 10],
        [85, 70],
      ],
      on: 'base',
    });
    const { crossings } = planChecks(card);
    expect(crossings.map(({ at }) => at)).toEqual([[85, 64]]);
    expect(crossings[0].patch.outline[0]).toEqual([79.5, 58.5]);
    expect(crossings[0].patch.beneath.map(({ id }) => id)).toEqual(['minus rail']);
    card.patches = [{ id: 'K', ...crossings[0].patch, strips: [] }];
    expect(planChecks(card).crossings).toEqual([]);
  });

  it('tells two strips too near each other by the checker itself', () => {
    const card = smallCard();
    card.plan!.strips.push({
      id: 'near',
      net: 'minus',
      width_mm: 4,
      path: [
        [29.6, 15],
        [29.6, 64],
      ],
      on: 'base',
    });
    const { findings } = planChecks(card);
    expect(findings.map(({ kind }) => kind)).toContain('tight');
  });
});

it('a plan traced from a build has its strips where they lie', () => {
  const card = smallCard();
  const strips = planFromTraced(laid(card, [...planned(card).values()].slice(0, 2)));
  expect(strips).toHaveLength(2);
  for (const [k, { path, width_mm }] of strips.entries()) {
    expect(width_mm).toBeCloseTo(5, 0);
    const xs = path.map(([x]) => x);
    expect(Math.min(...xs)).toBeLessThan(11);
    expect(Math.max(...xs)).toBeGreaterThan(92);
    for (const [, y] of path) expect(Math.abs(y - [10, 64][k])).toBeLessThan(1);
  }
});

describe('the front', () => {
  const card = smallCard();
  /** White card with dark holes; the back shows them mirrored. */
  function front(holes: Point[], mirrored: boolean): SquaredSheet {
    const { width_mm, height_mm } = card.base;
    const [width, height] = [width_mm * 10, height_mm * 10];
    const rgb = new Uint8Array(width * height * 3).fill(235);
    for (const [x, y] of holes) {
      const cx = (mirrored ? width_mm - x : x) * 10;
      for (let j = Math.floor(y * 10 - 8); j <= y * 10 + 8; j++) {
        for (let i = Math.floor(cx - 8); i <= cx + 8; i++) {
          if (Math.hypot(i + 0.5 - cx, j + 0.5 - y * 10) <= 8)
            rgb.fill(40, 3 * (j * width + i), 3 * (j * width + i) + 3);
        }
      }
    }
    return {
      width,
      height,
      pxPerMm: 10,
      originMm: [0, 0],
      baseMm: { width: width_mm, height: height_mm },
      rgb,
      toPhoto: [10, 0, 0, 0, 10, 0, 0, 0, 1],
      photoPxPerMm: 10,
    };
  }

  it.each([true, false])('tells each hole’s miss in mm (back: %s)', (back) => {
    const sheet = front(
      [
        [25, 37],
        [52, 38],
        [75, 37.5],
      ],
      back,
    );
    const misses = checkFront(sheet, card, back ? 'back' : 'face');
    expect(misses.map(({ ok }) => ok)).toEqual([true, false, true]);
    expect(misses[1].missMm).toBeCloseTo(Math.hypot(2, 1), 1);
    expect(misses[1].hole!.diameterMm).toBeCloseTo(1.6, 1);
  });

  it('says where no hole is near a lamp', () => {
    expect(checkFront(front([[25, 37]], false), card, 'face')[2]).toEqual({ lamp: 'L3', ok: false });
  });
});

it('a contact’s lamp gets a branch of its own in a suggested route', () => {
  const card = smallCard({ contacts: [{ id: 'C1', at: [88, 37] }] });
  card.lamps[2].intent = { contact: 'C1' };
  const { strips } = suggestRoute(card);
  expect(new Set(strips.map(({ net }) => net))).toEqual(new Set(['plus', 'minus', 'C1']));
});
