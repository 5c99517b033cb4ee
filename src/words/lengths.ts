import { decimal, pointed } from './numbers.ts';

export type Unit = 'mm' | 'inch';

/** @source the inch is 25.4 mm exactly: international yard and pound agreement, 1959 */
export const inchMm = 25.4;

let chosen: Unit = 'mm';

/** Tells every length in this unit from now on. */
export function measureIn(unit: Unit): void {
  chosen = unit;
}

/** Tells lengths as a card asks for them. */
export function measureAs(card: { show_inches?: boolean }): void {
  measureIn(card.show_inches ? 'inch' : 'mm');
}

export function unit(): Unit {
  return chosen;
}

/** How the unit is written behind a figure. */
export function unitSign(): string {
  return chosen === 'mm' ? 'mm' : 'in';
}

/** A length as a figure in the chosen unit, without it; inches have one digit more and a half, so that none is lost. */
export function lengthFigure(mm: number, digits = 1): string {
  return chosen === 'mm' ? decimal(mm, digits) : decimal(mm / inchMm, digits + 1);
}

/** A length with its unit. @param digits decimals of the mm; inches have one more */
export function length(mm: number, digits = 1): string {
  return `${lengthFigure(mm, digits)} ${unitSign()}`;
}

/** A length as short as it can be written: 5 mm, 2.5 mm, 0.2 in. */
export function shortLength(mm: number, digits = 1): string {
  const figure = chosen === 'mm' ? mm.toFixed(digits) : (mm / inchMm).toFixed(digits + 1);
  return `${pointed(String(Number(figure)))} ${unitSign()}`;
}

/** A length of tape off the roll: metres or feet of twelve inches. */
export function longLength(mm: number): string {
  return chosen === 'mm' ? `${decimal(mm / 1000, 2)} m` : `${decimal(mm / inchMm / 12, 1)} ft`;
}

/** How long the bar is by which a print is measured, mm: 50 mm or 2 inches. */
export function printBarMm(): number {
  return chosen === 'mm' ? 50 : 2 * inchMm;
}

/** An area with its unit: mm² or square inches. */
export function area(mm2: number, digits = 0): string {
  return chosen === 'mm' ? `${decimal(mm2, digits)} mm²` : `${decimal(mm2 / inchMm ** 2, digits + 2)} in²`;
}
