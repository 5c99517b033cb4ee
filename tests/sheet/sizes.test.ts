import { describe, expect, it } from 'vitest';
import { checkScaleByCell, inchSizes, isoSizes, isoToleranceMm, nearestSize } from '../../src/sheet/index.ts';

describe('isoSizes', () => {
  // ISO 216:2007: A0 has 1 m2 and sides in the ratio 1 : sqrt 2; each next size halves the long side, rounded down.
  it('follow from A0 by halving (ISO 216)', () => {
    let [w, h] = [841, 1189];
    const series: [number, number][] = [];
    for (let n = 0; n <= 7; n++) {
      series.push([w, h]);
      [w, h] = [Math.floor(h / 2), w];
    }
    for (const size of isoSizes) expect([size.width, size.height]).toEqual(series[Number(size.name[1])]);
    expect(841 * 1189).toBeCloseTo(1e6, -3);
  });

  it('have the ratio 1 : sqrt 2 within the tolerance of ISO 216', () => {
    for (const { width, height } of isoSizes) {
      expect(Math.abs(height - width * Math.SQRT2)).toBeLessThan(isoToleranceMm(height));
    }
  });
});

describe('inchSizes', () => {
  it('are exact at 25.4 mm an inch (international yard and pound agreement, 1959)', () => {
    inchSizes.forEach((s, i) => expect(s.width / 25.4).toBeCloseTo([3.5, 4, 4.25, 5, 6, 8.5][i], 12));
  });
});

describe('nearestSize', () => {
  it('names a sheet measured lying on its side', () => {
    expect(nearestSize(147.2, 105.6, 2)?.name).toBe('A6');
    expect(nearestSize(127.4, 177.1, 2)?.name).toBe('5 x 7 in');
  });
  it('stays silent for an odd size', () => expect(nearestSize(120, 120, 2)).toBeUndefined());
});

describe('checkScaleByCell', () => {
  // IEC 60086-2: a CR2032 is 19.7 to 20.0 mm wide.
  it('agrees within the limits of IEC 60086 and 3 %', () => {
    expect(checkScaleByCell(20.0, 'CR2032').agrees).toBe(true);
    expect(checkScaleByCell(19.2, 'CR2032').agrees).toBe(true);
    expect(checkScaleByCell(20.5, 'CR2032').agrees).toBe(true);
  });
  it('warns beyond 3 % and says by how much', () => {
    const check = checkScaleByCell(21.4, 'CR2032');
    expect(check.agrees).toBe(false);
    expect(check.say).toContain('7 %');
    expect(check.ratio).toBeCloseTo(1.078, 3);
    expect(checkScaleByCell(19.0, 'CR2032').agrees).toBe(false);
  });
});
