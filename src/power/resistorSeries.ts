/** @source IEC 60063 */
const e12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
const e6 = [10, 15, 22, 33, 47, 68];

export const series = { E6: e6, E12: e12, E24: e24 } as const;
export type SeriesName = keyof typeof series;

/** The values of a series from `least` to `most`, ohm, rising. */
export function valuesBetween(name: SeriesName, least: number, most: number): number[] {
  const decades = [0.1, 1, 10, 100, 1000, 10_000, 100_000];
  const all = decades.flatMap((decade) =>
    series[name].map((value) => Number((value * decade).toPrecision(2))),
  );
  return all.filter((value) => value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9));
}

/** The least value of a series that is not under `ohm` (1 ohm to 9.1 Mohm). */
export function nextUp(ohm: number, name: SeriesName): number {
  return valuesBetween(name, Math.max(1, ohm), 1e7)[0] ?? Infinity;
}

/**
 * The resistor in line with each of `branches` equal lamps that sets their current: R = (E - Vf) / I - N Rcell, as the
 * cell's own resistance carries all of them.
 * @returns ohm, negative when the cell cannot give that current
 */
export function seriesOhm(
  cell: { volt: number; ohm: number },
  forwardVolt: number,
  amps: number,
  branches: number,
): number {
  return (cell.volt - forwardVolt) / amps - branches * cell.ohm;
}

/** @source IEC 60062 */
const digits = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
] as const;
const multipliers: Record<number, string> = { '-2': 'silver', '-1': 'gold' };

/**
 * Colour bands of a resistor of two digits: four bands at 5 %, five at 1 %.
 * @param ohm from 0.1 up, two significant digits
 */
export function colourBands(ohm: number, tolerance: '5%' | '1%' = '5%'): string[] {
  const count = tolerance === '5%' ? 2 : 3;
  const power = Math.floor(Math.log10(ohm) + 1e-9) - (count - 1);
  const figures = String(Math.round(ohm / 10 ** power));
  const multiplier = multipliers[power] ?? digits[power] ?? '';
  return [
    ...[...figures].map((figure) => digits[Number(figure)] as string),
    multiplier,
    tolerance === '5%' ? 'gold' : 'brown',
  ];
}
