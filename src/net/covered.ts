import type { Card } from '../card/index.ts';
import { insideRing, type Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { cellDiameterMm, flapOver } from '../parts/index.ts';
import { distance, toSegment } from './distance.ts';

/** Whether a lamp, the cell or a patch lies over a place, so that a photograph says nothing of the copper there. */
export function covered(card: Card, at: Point): boolean {
  return (
    lampOver(card, at) || cellOver(card, at) || card.patches.some(({ outline }) => insideRing(at, outline))
  );
}

/** So far beyond its body a lamp's shadow and its foot leave open how the tape runs, mm. */
const shadowMm = 1;

/**
 * Whether a lamp's body lies over a place: between its pads, as wide as such bodies are (common practice, no source).
 * @param moreMm counts what lies so far beside it too
 */
export function lampOver(card: Card, at: Point, moreMm = 0): boolean {
  return card.lamps.some(({ plus, minus }) => {
    const half = Math.max(1.6, 0.35 * distance(plus, minus));
    return toSegment(at, plus, minus) <= half + moreMm;
  });
}

/** Whether a place lies by a lamp, so that a narrow or broken look alone says nothing. */
export function inLampShadow(card: Card, at: Point): boolean {
  return lampOver(card, at, shadowMm);
}

/** Whether the cell lies over a place, its rim included. */
export function cellOver({ cell }: Pick<Card, 'cell'>, at: Point, moreMm = 1): boolean {
  return cell !== undefined && distance(at, cell.at) < cellDiameterMm[cell.kind] / 2 + moreMm;
}

/** Whether a place lies on the base or on a flap of it; what lies beside them is the table. */
export function onSheet({ baseMm }: Pick<Traced, 'baseMm'>, card: Card, at: Point): boolean {
  const [x, y] = at;
  const onBase = x >= -0.5 && y >= -0.5 && x <= baseMm.width + 0.5 && y <= baseMm.height + 0.5;
  return onBase || card.flaps.some((flap) => flapOver(flap, at));
}

/** The sheet that a place lies on: a flap's id, a patch's id or 'base'. */
export function sheetAt(card: Card, at: Point): string {
  const flap = card.flaps.find((each) => flapOver(each, at));
  return flap?.id ?? card.patches.find(({ outline }) => insideRing(at, outline))?.id ?? 'base';
}
