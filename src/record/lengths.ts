import type { Card } from '../card/index.ts';
import { inchMm } from '../words/lengths.ts';
import { decimal } from '../words/numbers.ts';

/** Says a length in the unit that the card is shown in. 1 inch = 25.4 mm exactly. */
export function sayLength(mm: number, card: Pick<Card, 'show_inches'>, digits = 1): string {
  return card.show_inches ? `${decimal(mm / inchMm, digits + 1)} in` : `${decimal(mm, digits)} mm`;
}
