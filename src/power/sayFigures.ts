import { pointed } from '../words/numbers.ts';
import { powerWords } from '../words/power.ts';

/** A figure as a maker reads it: three significant digits, no trailing noise, never in exponents. */
export function figure(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return '∞';
  return pointed(String(Number(value.toPrecision(digits))));
}

/** "L1, L2 and L3"; more than six are named by the first and the count. */
export function lampList(ids: readonly string[]): string {
  if (ids.length <= 6) return powerWords.and([...ids]);
  return powerWords.and([...ids.slice(0, 4), powerWords.more(ids.length - 4)]);
}

/** The colour bands of a resistor, in the order in which they are read. */
export function sayBands(bands: readonly string[]): string {
  const names: Record<string, string> = powerWords.bandColours;
  return bands.map((band) => names[band] ?? band).join(' ');
}
