import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { distanceToRibbon } from '../strip/ribbon.ts';

/** A strip that begins so near another's copper carries the same net on, mm. */
const TOUCH_MM = 0.5;
const PAD_MM = 0.5;

/** The net that a strip beginning here most likely belongs to: that of the strip there, else by the pad's own sign. */
export function netAt(card: Card, at: Point): string | undefined {
  const strip = card.plan?.strips.find(
    ({ path, width_mm }) => distanceToRibbon(at, { path, widthMm: width_mm }) <= TOUCH_MM,
  );
  if (strip) return strip.net;
  const near = (pad: Point) => Math.hypot(pad[0] - at[0], pad[1] - at[1]) <= PAD_MM;
  if (card.lamps.some(({ plus }) => near(plus))) return 'plus';
  if (card.lamps.some(({ minus }) => near(minus))) return 'minus';
  if (card.cell && near(card.cell.at)) return card.cell.up === '+' ? 'minus' : 'plus';
  return undefined;
}
