import { describe, expect, it } from 'vitest';
import type { LampColour } from '../../src/card/index.ts';
import { diodeBranch, diodeVolt, leak } from '../../src/power/diode.ts';
import { colourDiode, lampDiode, shiftDiode } from '../../src/power/lampTable.ts';
import { solve } from '../../src/power/solve.ts';
import { wrightOmega } from '../../src/power/wrightOmega.ts';
import { spiceTable } from '../references/spice/table.ts';

function oneLamp(colour: LampColour, volt: number, ohm: number, seriesOhm = 0): number {
  const { amps } = solve({
    elements: [
      { kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt, ohm },
      { kind: 'lamp', id: 'lamp', plus: 'p', minus: 'n', diode: colourDiode(colour), seriesOhm },
    ],
  });
  return amps('lamp');
}

describe('Wright omega', () => {
  // The omega constant: sequence A030178 of the On-Line Encyclopedia of Integer Sequences; omega(1) = 1 by definition.
  it('is the omega constant at 0 and 1 at 1', () => {
    expect(wrightOmega(0)).toBeCloseTo(0.56714329040978387, 15);
    expect(wrightOmega(1)).toBeCloseTo(1, 15);
  });

  it('satisfies y + ln y = z from deep reverse to far overdrive', () => {
    for (let z = -49; z < 1e5; z += Math.max(0.13, z * 0.05)) {
      const y = wrightOmega(z);
      expect(Math.abs(y + Math.log(y) - z)).toBeLessThan(1e-14 * Math.max(1, Math.abs(z)));
    }
  });
});

describe('one lamp and a resistor: closed Lambert-W form', () => {
  it('equals 100 tabled values to their nine figures', () => {
    const rows = spiceTable('oneLamp');
    expect(rows).toHaveLength(100);
    for (const row of rows) {
      const amps = oneLamp(
        row['colour'] as LampColour,
        Number(row['emf_V']),
        Number(row['R_total_outside_lamp_ohm']),
      );
      expect(Math.abs((amps * 1000) / Number(row['I_mA']) - 1)).toBeLessThan(6e-9);
    }
  });

  // Computed in high precision from I = (a/R) W((Is R/a) exp((E + Is R)/a)) - Is.
  it.each([
    ['red', 3.0, 15, 51.685801999],
    ['red', 3.0, 115, 9.515779587],
    ['red', 2.8, 30, 25.296434984],
    ['red', 2.6, 60, 11.273491002],
    ['white', 3.0, 15, 6.431635189],
    ['white', 3.0, 37, 4.125794615],
    ['white', 3.0, 115, 1.951409495],
    ['white', 2.8, 30, 1.505351867],
    ['white', 2.6, 60, 0.120841004],
  ] as const)('%s at %s V and %s ohm: %s mA, to 1e-9 beyond the print', (colour, volt, ohm, mA) => {
    expect(Math.abs(oneLamp(colour, volt, ohm) * 1000 - mA)).toBeLessThan(1e-9 * mA + 0.6e-9);
  });

  it('equals the equation itself to 1e-9 for every colour, cell and resistor', () => {
    for (const colour of ['red', 'yellow-green', 'green', 'white', 'uv'] as const)
      for (const volt of [3.2, 3, 2.8, 2.4, 2])
        for (const ohm of [15, 60, 1000]) {
          const amps = oneLamp(colour, volt, ohm, 47);
          if (amps < 1e-6) continue;
          const { saturationA, slopeV, ohm: chip } = colourDiode(colour);
          // The current that a bisection of V(I) gives, which uses no special function.
          let [low, high] = [0, volt / (ohm + 47 + chip)];
          for (let i = 0; i < 200; i++) {
            const middle = (low + high) / 2;
            const sum = slopeV * Math.log1p(middle / saturationA) + middle * (chip + 47 + ohm);
            if (sum < volt) low = middle;
            else high = middle;
          }
          expect(Math.abs(amps / low - 1)).toBeLessThan(1e-9 + (leak * volt) / low);
        }
  });
});

describe('lamps by their own figures', () => {
  it('passes through the point that a maker states', () => {
    for (const [volt, mA] of [
      [2.9, 5],
      [2.0, 20],
      [3.2, 100],
      [1.7, 1],
    ] as const) {
      const diode = lampDiode({ colour: 'white', forward: { volt, mA } });
      expect(diodeVolt(diode, mA / 1000)).toBeCloseTo(volt, 9);
      expect(diodeBranch(diode, 0, volt).amps * 1000).toBeCloseTo(mA, 9);
    }
  });

  // Typical forward voltages at 5 and 20 mA that define the curves: generic data sheets and a secondary table.
  it.each([
    ['red', 1.85, 2.0],
    ['orange', 1.88, 2.03],
    ['amber', 1.9, 2.05],
    ['yellow', 1.92, 2.07],
    ['yellow-green', 1.95, 2.1],
    ['green', 2.85, 3.15],
    ['blue', 2.87, 3.15],
    ['white', 2.87, 3.15],
    ['uv', 3.05, 3.35],
  ] as const)('%s drops %s V at 5 mA and %s V at 20 mA', (colour, at5, at20) => {
    expect(diodeVolt(colourDiode(colour), 0.005)).toBeCloseTo(at5, 3);
    expect(diodeVolt(colourDiode(colour), 0.02)).toBeCloseTo(at20, 3);
  });

  // A white lamp with its forward voltage shifted by -0.25 and +0.30 V: saturation currents of the reference decks.
  it('shifts a forward voltage by its saturation current', () => {
    expect(shiftDiode(colourDiode('white'), -0.25).saturationA / 1.6376e-22).toBeCloseTo(1, 4);
    expect(shiftDiode(colourDiode('white'), 0.3).saturationA / 1.0387e-26).toBeCloseTo(1, 4);
  });
});
