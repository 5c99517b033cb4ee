import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Attached, PadPlace } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import type { State } from './types.ts';
import type { Wiring } from './wiring.ts';

/** All that a finding is made from. */
export interface Case {
  traced: Traced;
  card: Card;
  attached: Attached;
  wiring: Wiring;
  states: State[];
}

export function padOf({ attached }: Case, name: string): PadPlace | undefined {
  return attached.pads.find(({ pad }) => pad === name);
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Distance from a place to a straight piece, mm. */
export function toSegment(p: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}

/** Whether a lamp's body lies over a place: between its pads, as wide as such bodies are (common practice, no source). */
export function lampOver(card: Card, at: Point): boolean {
  return card.lamps.some(({ plus, minus }) => {
    const half = Math.max(1.6, 0.35 * distance(plus, minus));
    return toSegment(at, plus, minus) <= half;
  });
}
