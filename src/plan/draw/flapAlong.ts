import type { Card, Flap } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';

/** How far a new flap reaches from its fold: over a cell of 20 mm and the rim of its nest. */
const DEPTH_MM = 30;

/**
 * A flap hinged along the edge of the base that a drag follows, open beside it.
 * @returns undefined where the drag is too short for a fold
 */
export function flapAlong(card: Card, from: Point, to: Point): Pick<Flap, 'fold' | 'outline'> | undefined {
  const { width_mm: w, height_mm: h } = card.base;
  const [mx, my] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const upright = Math.min(mx, w - mx) < Math.min(my, h - my);
  const edge = upright ? (mx < w / 2 ? 0 : w) : my < h / 2 ? 0 : h;
  const out = edge === 0 ? -DEPTH_MM : DEPTH_MM;
  const most = upright ? h : w;
  const along = upright ? [from[1], to[1]] : [from[0], to[0]];
  const [low, high] = along.map((v) => Math.min(most, Math.max(0, Math.round(v)))).sort((a, b) => a - b);
  if (high - low < 5) return undefined;
  const place = (s: number, off: number): [number, number] => (upright ? [edge + off, s] : [s, edge + off]);
  return {
    fold: [place(low, 0), place(high, 0)],
    outline: [place(low, 0), place(high, 0), place(high, out), place(low, out)],
  };
}
