import type { Point } from '../../geometry/index.ts';
import { pieceAt } from '../../parts/index.ts';
import type { Neck, StripEnd, Traced } from '../../trace/index.ts';
import { facingEnds } from '../facing.ts';

/** Ends farther apart than this, mm, are parted by more than a glint on a thread. */
const hairMm = 0.5;
/** How far back from its end a strip is measured, and the step of measuring, mm. */
const backMm = 0.3;
const stepMm = 0.05;
/** Both ends are narrower than this share of their strip. */
const taper = 0.6;

/**
 * Places where a strip tapers from both sides to a thread of which the mask has lost the thinnest: whether it holds or is
 * torn, current has no more than a thread to pass.
 */
export function threads(traced: Traced): Neck[] {
  return facingEnds(traced).flatMap(({ a, b, mm }) => {
    if (mm > hairMm) return [];
    const mouths = [a, b].map((end) => ({ end, widthMm: mouthMm(traced, end) }));
    if (mouths.some(({ end, widthMm }) => widthMm >= taper * end.widthMm)) return [];
    const [{ end, widthMm }] = mouths.sort((p, q) => p.widthMm - q.widthMm);
    return [{ piece: end.piece, at: behind(end), widthMm, usualMm: Math.max(a.widthMm, b.widthMm) }];
  });
}

function behind({ at, out }: StripEnd): Point {
  return [at[0] - backMm * out[0], at[1] - backMm * out[1]];
}

/** Copper across a strip a little before its end, mm. */
function mouthMm(traced: Traced, end: StripEnd): number {
  const from = behind(end);
  const across = [-end.out[1], end.out[0]];
  const reach = (side: number): number => {
    let mm = 0;
    const at = (): Point => [from[0] + side * mm * across[0], from[1] + side * mm * across[1]];
    while (mm < end.widthMm && pieceAt(traced, at()) === end.piece) mm += stepMm;
    return mm;
  };
  return reach(1) + reach(-1);
}
