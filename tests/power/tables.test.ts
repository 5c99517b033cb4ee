import { describe, expect, it } from 'vitest';
import { cellAt, cellTable } from '../../src/power/cellTable.ts';
import { diodeVolt } from '../../src/power/diode.ts';
import { colourDiode } from '../../src/power/lampTable.ts';
import { colourBands, nextUp, series, seriesOhm } from '../../src/power/resistorSeries.ts';
import { solve } from '../../src/power/solve.ts';
import { copperOhmM, tapeOhm, warmingAmps, wireOhmPerM } from '../../src/power/tape.ts';
import type { Element } from '../../src/power/types.ts';

describe('copper', () => {
  // IEC 60028 (1925): 58 MS/m at 20 degrees C, 0.00393 per K.
  it('conducts 58 MS/m at 20 degrees and loses 0.393 % a degree', () => {
    expect(1 / copperOhmM / 58e6).toBeCloseTo(1, 4);
    expect(tapeOhm(1000, 5, 0.035, 40)).toBeCloseTo(0.10626, 4);
  });

  // American wire gauge by ASTM B258, in ohm per 1000 ft at 20 degrees C, as in published wire tables (cirris.com among them).
  it.each([
    [10, 0.9988],
    [18, 6.385],
    [24, 25.67],
    [26, 40.81],
    [28, 64.9],
    [30, 103.2],
  ])('%s AWG wire has %s ohm per 1000 ft', (gauge, ohm) => {
    expect(Math.abs((wireOhmPerM(gauge) * 304.8) / ohm - 1)).toBeLessThan(5e-4);
  });

  // "0.5 mohm per square at 1 oz" is the usual figure of board makers; 5 mm of 35 um tape in ohm per metre by IEC 60028.
  it('has half a milliohm a square at 35 um, twice that when split', () => {
    expect(tapeOhm(5, 5)).toBeCloseTo(0.000493, 6);
    expect(tapeOhm(1000, 5)).toBeCloseTo(0.09852, 4);
    expect(tapeOhm(200, 2.5)).toBeCloseTo(0.03941, 4);
    expect(tapeOhm(300, 2.5) / tapeOhm(300, 5)).toBeCloseTo(2, 12);
  });

  // IPC-2221 for 10 mil of 1 oz copper and 10 K: published 0.884 A.
  it('warms as IPC-2221 says', () => {
    expect(warmingAmps(0.254, 10)).toBeCloseTo(0.885, 2);
    expect(warmingAmps(5, 10)).toBeCloseTo(7.681, 2);
    expect(warmingAmps(2.5, 20)).toBeCloseTo(6.304, 2);
  });
});

describe('resistors', () => {
  // IEC 60063.
  it('has six, twelve and twenty-four values a decade, each series in the next but for E6 in E12', () => {
    expect([series.E6.length, series.E12.length, series.E24.length]).toEqual([6, 12, 24]);
    expect(series.E12.every((value) => (series.E24 as readonly number[]).includes(value))).toBe(true);
    expect(series.E6.every((value) => (series.E12 as readonly number[]).includes(value))).toBe(true);
  });

  it('rounds up to the next value', () => {
    expect(nextUp(215, 'E12')).toBe(220);
    expect(nextUp(185, 'E24')).toBe(200);
    expect(nextUp(220, 'E12')).toBe(220);
    expect(nextUp(830, 'E12')).toBe(1000);
  });

  // IEC 60062, examples as printed on resistor charts.
  it.each([
    [1, 'brown black gold gold', 'brown black black silver brown'],
    [10, 'brown black black gold', 'brown black black gold brown'],
    [22, 'red red black gold', 'red red black gold brown'],
    [47, 'yellow violet black gold', 'yellow violet black gold brown'],
    [82, 'grey red black gold', 'grey red black gold brown'],
    [100, 'brown black brown gold', 'brown black black black brown'],
    [220, 'red red brown gold', 'red red black black brown'],
    [470, 'yellow violet brown gold', 'yellow violet black black brown'],
    [1000, 'brown black red gold', 'brown black black brown brown'],
    [10_000, 'brown black orange gold', 'brown black black red brown'],
  ])('%s ohm is %s', (ohm, four, five) => {
    expect(colourBands(ohm, '5%').join(' ')).toBe(four);
    expect(colourBands(ohm, '1%').join(' ')).toBe(five);
  });

  // R = (E - Vf) / I - N Rcell, worked by hand from the forward voltages of generic data sheets; cell 3.0 V, 15 ohm.
  it.each([
    ['red', 1, 5, 215.0, 220, 4.9],
    ['red', 3, 5, 185.0, 220, 4.3764],
    ['red', 1, 10, 93.92, 100, 9.5158],
    ['yellow', 1, 5, 201.0, 220, 4.6206],
    ['green', 1, 2, 108.18, 120, 1.8681],
    ['white', 1, 5, 11.0, 12, 4.9036],
    ['white', 3, 2, 66.18, 68, 1.9765],
    ['red', 5, 2, 529.88, 560, 1.9093],
    ['white', 5, 1, 200.21, 220, 0.9461],
  ] as const)('%s, %s of them at %s mA: %s ohm', (colour, count, mA, ohm, e12, mAThen) => {
    const exact = seriesOhm(
      { volt: 3, ohm: 15 },
      diodeVolt(colourDiode(colour), mA / 1000),
      mA / 1000,
      count,
    );
    expect(exact).toBeCloseTo(ohm, 1);
    expect(nextUp(exact, 'E12')).toBe(e12);
    const lamps = Array.from({ length: count }, (_, i): Element => {
      return { kind: 'lamp', id: `L${i}`, plus: 'p', minus: 'n', diode: colourDiode(colour), seriesOhm: e12 };
    });
    const { amps } = solve({
      elements: [{ kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt: 3, ohm: 15 }, ...lamps],
    });
    expect(amps('L0') * 1000).toBeCloseTo(mAThen, 3);
  });
});

describe('cells', () => {
  // IEC 60086 naming: letter C = lithium-manganese dioxide, R = round, two digits mm diameter, two digits tenths of a mm height.
  it.each(['CR2032', 'CR2025', 'CR2016', 'CR1620', 'CR1225'] as const)(
    '%s has the size of its name',
    (kind) => {
      const { diameterMm, heightMm } = cellTable[kind];
      expect(Math.floor(diameterMm)).toBe(Number(kind.slice(2, 4)));
      expect(heightMm).toBeCloseTo(Number(kind.slice(4)) / 10, 9);
    },
  );

  // CR2032 under load: fresh 3.0 V behind 15 ohm, two thirds used 2.8 V behind 30 ohm (a data sheet read on a public blog, 2009).
  it('sags with use', () => {
    expect(cellAt('CR2032', 1)).toEqual({ volt: 3, ohm: 15 });
    expect(cellAt('CR2032', 0.3).volt).toBeCloseTo(2.8, 9);
    expect(cellAt('CR2032', 0.3).ohm).toBeCloseTo(30, 9);
  });

  it('never gains voltage or loses resistance as it is used', () => {
    for (const kind of ['CR2032', 'LR44'] as const)
      for (let charge = 0.01; charge <= 1; charge += 0.01) {
        const [less, more] = [cellAt(kind, charge - 0.01), cellAt(kind, charge)];
        expect(more.volt).toBeGreaterThan(less.volt);
        expect(more.ohm).toBeLessThan(less.ohm);
      }
  });
});
