import { language, type Language } from './language.ts';

/** Languages that part the decimals by a comma. */
const commas = new Set<Language>(['de', 'fr']);

/** A figure with so many decimals, as the chosen language writes it. */
export function decimal(value: number, digits: number): string {
  return pointed(value.toFixed(digits));
}

/** A figure already rounded, with the decimal sign of the chosen language. */
export function pointed(figure: string): string {
  return commas.has(language()) ? figure.replace('.', ',') : figure;
}

/** A whole number with its thousands set apart. */
export function whole(value: number): string {
  return Math.round(value).toLocaleString(language());
}
