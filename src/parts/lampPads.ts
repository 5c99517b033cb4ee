import type { Lamp } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Traced } from '../trace/index.ts';
import { nearPieces } from './nearest.ts';
import type { PadPlace } from './types.ts';

/** A lamp's body hides the copper right at its pad: so far, mm, may the nearest visible copper lie (common practice, no source). */
const hiddenMm = 1.3;
/** Past this distance, mm, the pad plainly hangs over paper. */
const plainlyOffMm = 2.4;
/** Copper is looked for up to here to say how far off a pad is, mm. */
const lookMm = 6;

/** Both pads of a lamp laid on the copper of their own side of its body. */
export function lampPads(traced: Traced, lamp: Lamp): PadPlace[] {
  return [
    pad(traced, `${lamp.id}+`, lamp.plus, lamp.minus),
    pad(traced, `${lamp.id}-`, lamp.minus, lamp.plus),
  ];
}

function pad(traced: Traced, name: string, at: Point, other: Point): PadPlace {
  const axis: Point = [at[0] - other[0], at[1] - other[1]];
  const spacing = Math.hypot(axis[0], axis[1]) || 1;
  const middle: Point = [(at[0] + other[0]) / 2, (at[1] + other[1]) / 2];
  // Copper counts only on this pad's side of the body's middle: what lies beyond belongs to the other pad.
  const ownSide = (p: Point) =>
    ((p[0] - middle[0]) * axis[0] + (p[1] - middle[1]) * axis[1]) / spacing > 0.12 * spacing;
  const near = nearPieces(traced, at, lookMm, ownSide)[0];
  if (!near) return { pad: name, at, piece: 0, mm: Infinity, certainty: 0.95 };
  const reach = Math.min(plainlyOffMm, hiddenMm + 0.12 * spacing);
  if (near.mm <= reach)
    return { pad: name, at, piece: near.piece, mm: near.mm, certainty: onCertainty(near.mm, reach) };
  const certainty = Math.min(0.97, 0.55 + (0.4 * (near.mm - reach)) / (plainlyOffMm - hiddenMm));
  return { pad: name, at, piece: 0, mm: near.mm, certainty };
}

function onCertainty(mm: number, reach: number): number {
  return 0.98 - 0.4 * Math.max(0, mm / reach - 0.5);
}
