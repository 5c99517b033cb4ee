import type { Lamp, LampColour } from '../card/index.ts';
import { thermalVolt } from './diode.ts';
import type { Diode } from './types.ts';

/** A lamp colour: its curve and the spread of its forward voltage between parts. */
interface LampKind {
  /** Ideality factor n. */
  n: number;
  saturationA: number;
  ohm: number;
  /** Forward voltage at 5 mA, V: least, typical, most. */
  at5mA: readonly [number, number, number];
  /** 'low': AlGaInP or GaP, about 2 V. 'high': InGaN, about 3 V. On one cell the low take what the high need. */
  family: 'low' | 'high';
}

/**
 * Is and Rs follow from n and the two typical points at 5 and 20 mA; the rounded figures are the definition.
 * @source 20 mA typical and limits of red, true green, blue, white: two generic data sheets (a 5 mm three-colour lamp, 2009; a
 *   1.0 x 0.5 mm chip series), confirmed. Other colours' 20 mA points: a secondary table. The 5 mA points and limits, and n of
 *   AlGaInP: from memory. n = 2.2 of InGaN agrees with a bench reading of a blue lamp (2.444 V at 1.8 uA).
 *   Warm white and pink: a blue chip with phosphor, taken as white.
 */
const white: LampKind = {
  n: 2.2,
  saturationA: 2.0238e-24,
  ohm: 13.408,
  at5mA: [2.5, 2.87, 3.1],
  family: 'high',
};

export const lampTable: Record<LampColour, LampKind> = {
  red: { n: 1.8, saturationA: 5.0982e-20, ohm: 5.697, at5mA: [1.6, 1.85, 2.1], family: 'low' },
  orange: { n: 1.8, saturationA: 2.6765e-20, ohm: 5.697, at5mA: [1.65, 1.88, 2.1], family: 'low' },
  amber: { n: 1.8, saturationA: 1.7418e-20, ohm: 5.697, at5mA: [1.65, 1.9, 2.1], family: 'low' },
  yellow: { n: 1.8, saturationA: 1.1335e-20, ohm: 5.697, at5mA: [1.65, 1.92, 2.1], family: 'low' },
  'yellow-green': { n: 1.8, saturationA: 5.951e-21, ohm: 5.697, at5mA: [1.7, 1.95, 2.2], family: 'low' },
  green: { n: 2.2, saturationA: 3.2337e-24, ohm: 14.741, at5mA: [2.5, 2.85, 3.1], family: 'high' },
  blue: white,
  white,
  'warm-white': white,
  pink: white,
  uv: { n: 2.2, saturationA: 9.6219e-26, ohm: 14.741, at5mA: [2.8, 3.05, 3.3], family: 'high' },
};

/** The usual curve of a colour. */
export function colourDiode(colour: LampColour): Diode {
  const { n, saturationA, ohm } = lampTable[colour];
  return { saturationA, slopeV: n * thermalVolt, ohm };
}

/**
 * The curve of a card's lamp: its colour's, or, with a maker's own "2.9 V at 5 mA", the colour's bend shifted to pass
 * through that point. The chip's resistance may then take up a quarter of the voltage at most.
 */
export function lampDiode(lamp: Pick<Lamp, 'colour' | 'forward'>): Diode {
  const usual = colourDiode(lamp.colour);
  if (!lamp.forward) return usual;
  const amps = lamp.forward.mA / 1000;
  const ohm = Math.min(usual.ohm, lamp.forward.volt / (4 * amps));
  const junction = lamp.forward.volt - amps * ohm;
  return { saturationA: amps / Math.expm1(junction / usual.slopeV), slopeV: usual.slopeV, ohm };
}

/** The same lamp with its forward voltage higher by `volt` at every current. */
export function shiftDiode(diode: Diode, volt: number): Diode {
  return { ...diode, saturationA: diode.saturationA * Math.exp(-volt / diode.slopeV) };
}

/** 'low' about 2 V, 'high' about 3 V; a maker's own lamp by its stated voltage. */
export function familyOf(lamp: Pick<Lamp, 'colour' | 'forward'>): 'low' | 'high' {
  if (lamp.forward) return lamp.forward.volt < 2.4 ? 'low' : 'high';
  return lampTable[lamp.colour].family;
}
