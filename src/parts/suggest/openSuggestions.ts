import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Suggested } from './types.ts';

/** A lamp of the card this near, mm, is the one that is proposed. */
const sameLampMm = 5;

/** What of the suggestions the card does not have yet. */
export function openSuggestions({ lamps, cell }: Suggested, card: Card): Suggested {
  const middle = ({ plus, minus }: { plus: Point; minus: Point }): Point => [
    (plus[0] + minus[0]) / 2,
    (plus[1] + minus[1]) / 2,
  ];
  const laid = card.lamps.map(middle);
  const far = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  return {
    lamps: lamps.filter((lamp) => laid.every((at) => far(at, middle(lamp)) > sameLampMm)),
    ...(cell && !card.cell ? { cell } : {}),
  };
}
