import { describe, expect, it } from 'vitest';
import { fitSideCurve } from '../../src/sheet/sideCurve.ts';
import { randomFrom } from '../generate/random.ts';
import { mostlyShared, trackSide } from '../../src/sheet/outline/trackSide.ts';
import type { Sight } from '../../src/sheet/outline/trackSide.ts';

/** 140 places along a side, each with the side's own edge and the stronger one of a strip 2 mm inside it. */
function sights(own: (t: number) => number, hiddenFrom = 1): Sight[][] {
  return Array.from({ length: 140 }, (_, k) => {
    const t = 0.05 + (0.9 * (k + 0.5)) / 140;
    const strip = { t, across: 2 + 0.03 * Math.sin(9 * k), step: 60 };
    return t < hiddenFrom ? [strip, { t, across: own(t), step: 40 }] : [strip];
  });
}
const straight = () => 0;
/** Folded at 0.4 of its length; the straight side follows the longer part. */
const creased = (t: number) => (t < 0.4 ? (0.4 - t) * -4.5 : 0);

/** A straight side, seldom seen over its second half, where now and then the dark edge of a stone lies beside it. */
function onGranite(seed: number): Sight[][] {
  const d = randomFrom(seed);
  return Array.from({ length: 140 }, (_, k) => {
    const t = 0.05 + (0.9 * (k + 0.5)) / 140;
    const own = t < 0.5 || d.next() < 0.2 ? [{ t, across: d.between(-0.1, 0.1), step: 40 }] : [];
    const stone = t > 0.5 && d.next() < 0.5 ? [{ t, across: 4 * (t - 0.5), step: 45 }] : [];
    const grain = { t, across: d.between(-3, 3), step: d.between(20, 40) };
    return [...own, ...stone, grain].sort((p, q) => q.step - p.step);
  });
}

describe('trackSide', () => {
  it('follows a crease past a stronger strip beside it', () => {
    const track = trackSide(sights(creased), straight, mostlyShared);
    expect(track.length).toBeGreaterThan(130);
    for (const { t, across } of track) expect(across).toBe(creased(t));
  });

  it('keeps to the known side where only a strip runs beside it', () => {
    const track = trackSide(sights(straight), straight, mostlyShared);
    for (const { across } of track) expect(across).toBe(0);
  });

  it('does not bend a straight side to the grain of a table, though a bent line meets a little more', () => {
    for (let seed = 0; seed < 20; seed++) {
      const track = trackSide(onGranite(seed), straight, mostlyShared);
      const off = track.map(({ across }) => Math.abs(across));
      expect(Math.max(...off)).toBeLessThan(1);
    }
  });
});

describe('fitSideCurve', () => {
  const points = (own: (t: number) => number, until: number) =>
    sights(own).flatMap(([, { t, across }]) => (t < until ? [[t, across] as const] : []));

  it('meets the ends of a creased side within half a millimetre', () => {
    const curve = fitSideCurve(points(creased, 1))!;
    expect(Math.abs(curve.at0 - creased(0))).toBeLessThan(0.5);
    expect(Math.abs(curve.at1)).toBeLessThan(0.5);
  });

  it('does not bend a side whose one end is hidden: it would run anywhere there', () => {
    const waved = (t: number) => 0.25 * Math.sin(5 * t);
    expect(fitSideCurve(points(waved, 0.75))).toMatchObject({ a: 0, b: 0 });
  });
});
