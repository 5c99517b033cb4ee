import { afterEach, describe, expect, it } from 'vitest';
import { keySteps, sayKeys } from '../../src/bench/surface/keySteps.ts';
import { rulerTicks } from '../../src/bench/surface/rulerTicks.ts';
import { measureIn } from '../../src/words/lengths.ts';

afterEach(() => measureIn('mm'));

const figures = (lengthMm: number, scale: number) =>
  rulerTicks(lengthMm, scale).flatMap(({ mm, figure }) => (figure ? [[Number(figure), mm]] : []));

describe('a ruler', () => {
  it('counts mm by fifties on A6 (ISO 216: 105 x 148 mm)', () => {
    expect(figures(105, 3)).toEqual([
      [50, 50],
      [100, 100],
    ]);
    expect(rulerTicks(105, 3)).toHaveLength(11);
  });

  it('counts inches of 25.4 mm (international yard and pound agreement, 1959), quarters between', () => {
    measureIn('inch');
    expect(figures(105, 3)).toEqual([1, 2, 3, 4].map((inch) => [inch, inch * 25.4]));
    expect(rulerTicks(101.6, 3)).toHaveLength(17);
  });

  it.each(['mm', 'inch'] as const)('leaves room between figures in %s at any scale', (unit) => {
    measureIn(unit);
    for (const scale of [0.1, 0.3, 1, 2, 5, 20]) {
      const places = figures(2000, scale).map(([, mm]) => mm * scale);
      const apart = places.slice(1).map((x, i) => x - places[i]);
      expect(Math.min(...apart)).toBeGreaterThanOrEqual(26);
    }
  });
});

describe('the steps of the keys', () => {
  it('are round in the chosen unit over the sheet, and px over the photograph', () => {
    expect(keySteps('mm').usual).toBe(1);
    measureIn('inch');
    expect(keySteps('mm').usual * 20).toBeCloseTo(25.4, 9);
    expect(sayKeys('mm')).toMatch(/by 0\.05 in, with Shift by 0\.5 in, with Alt by 0\.005 in/);
    expect(sayKeys('px')).toMatch(/by 1 px/);
  });
});
