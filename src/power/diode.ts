import type { Diode } from './types.ts';
import { wrightOmega } from './wrightOmega.ts';

/** kT/q at 27 degrees C (300.15 K), V. @source CODATA k and q, exact since 2019 */
export const thermalVolt = (1.380649e-23 * 300.15) / 1.602176634e-19;

/** Leak across every junction, S, so that no node hangs on nothing. As small as a SPICE deck's GMIN may be set. */
export const leak = 1e-15;

/** Current and slope of a lamp with `seriesOhm` in line at a voltage across both. */
export interface Branch {
  amps: number;
  siemens: number;
}

/**
 * I = (a/R) W((Is R/a) exp((V + Is R)/a)) - Is, with R the whole series resistance.
 * @param volt across lamp and resistance; negative when reversed (then the current is at most Is and the leak)
 */
export function diodeBranch(diode: Diode, seriesOhm: number, volt: number): Branch {
  const { saturationA, slopeV } = diode;
  const ohm = diode.ohm + seriesOhm;
  const scale = (saturationA * ohm) / slopeV;
  const y = wrightOmega((volt + saturationA * ohm) / slopeV + Math.log(scale));
  return {
    amps: (slopeV / ohm) * y - saturationA + leak * volt,
    siemens: y / (ohm * (1 + y)) + leak,
  };
}

/** The voltage across a lamp alone that carries a current, V; the inverse of the above without the leak. */
export function diodeVolt(diode: Diode, amps: number): number {
  return diode.slopeV * Math.log1p(amps / diode.saturationA) + amps * diode.ohm;
}
