import { decimal } from './numbers.ts';

export type Unit = 'mm' | 'inch';

/** @source the inch is 25.4 mm exactly: international yard and pound agreement, 1959 */
export const inchMm = 25.4;

let chosen: Unit = 'mm';

/** Tells every length in this unit from now on. */
export function measureIn(unit: Unit): void {
  chosen = unit;
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

/** An area with its unit: mm² or square inches. */
export function area(mm2: number): string {
  return chosen === 'mm' ? `${decimal(mm2, 0)} mm²` : `${decimal(mm2 / inchMm ** 2, 2)} in²`;
}
