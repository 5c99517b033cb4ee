import type { Flap } from '../card/index.ts';
import { insideRing, type Point } from '../geometry/index.ts';

/** Whether a place lies on a flap that is opened flat. */
export function flapOver({ outline }: Pick<Flap, 'outline'>, at: Point): boolean {
  return insideRing(at, outline);
}
