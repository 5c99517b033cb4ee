import { describe, expect, it } from 'vitest';
import { certaintyOf } from '../../src/sheet/outline/certainty.ts';
import { looseEnds } from '../../src/sheet/outline/looseEnds.ts';

const places = Array.from({ length: 140 }, (_, k) => 0.05 + (0.9 * (k + 0.5)) / 140);
const whole = [places, places, places, places];
const hidden = (from: number, to: number) => [places.filter((t) => t < from || t > to), ...whole.slice(0, 3)];

describe('looseEnds', () => {
  it('is nothing where every side is seen all along, and little where a finger lies on the middle of one', () => {
    expect(looseEnds(whole)).toBeLessThan(0.05);
    expect(looseEnds(hidden(0.4, 0.6))).toBeLessThan(0.1);
  });

  it('grows with what is hidden at an end, alike at both', () => {
    expect(looseEnds(hidden(0, 0.2))).toBeGreaterThan(0.2);
    expect(looseEnds(hidden(0, 0.4))).toBeGreaterThan(looseEnds(hidden(0, 0.2)) + 0.2);
    expect(looseEnds(hidden(0.6, 1))).toBeCloseTo(looseEnds(hidden(0, 0.4)), 6);
  });

  it('is bounded where nothing is seen', () => {
    expect(looseEnds([[], ...whole.slice(1)])).toBe(1.5);
  });

  it('lowers the certainty of an outline of which an end is hidden', () => {
    const features = new Array<number>(53).fill(0.5);
    expect(certaintyOf(features, looseEnds(hidden(0, 0.4)))).toBeLessThan(0.5 * certaintyOf(features));
    expect(certaintyOf(features, looseEnds(whole))).toBe(certaintyOf(features));
  });
});
