import type { Point } from '../geometry/index.ts';
import { necksOf } from './necks.ts';
import type { Piece } from './types.ts';

/** mm from a narrow place within which the strip must have its width again, on both sides of it. */
const nearest = 2.5;
const farthest = 6;
/** Less of the strip's usual width than this left: the line may lead round a cut. */
const narrow = 0.45;
/** Cosine of the bend, least: the strip runs straight on. */
const straight = 0.94;

/** A narrow place that may be a cut which the mask does not open all the way. */
export interface Notch {
  piece: number;
  /** Straight over it, mm: the centre-line itself leads round. */
  path: Point[];
  widthMm: number;
}

export function notches(piece: Piece): Notch[] {
  return necksOf(piece)
    .filter(({ widthMm, usualMm }) => widthMm < narrow * usualMm)
    .flatMap(({ at, usualMm }) => {
      const path = straightOver(piece, at, usualMm);
      const into = intoSide(piece, at);
      return [
        ...(path ? [{ piece: piece.id, path, widthMm: usualMm }] : []),
        ...(into ? [{ piece: piece.id, ...into }] : []),
      ];
    });
}

/** From one wide place of the piece to another with the narrow place between them, as straight as may be. */
function straightOver({ lines }: Piece, at: Point, usualMm: number): Point[] | undefined {
  const wide = lines.flatMap(({ path, widths }) =>
    path.filter((p, k) => {
      const d = Math.hypot(p[0] - at[0], p[1] - at[1]);
      return d >= nearest && d <= farthest && widths[k] > 0.85 * usualMm && widths[k] < 1.3 * usualMm;
    }),
  );
  let best: Point[] | undefined;
  let least = straight;
  wide.forEach((a, n) => {
    for (const b of wide.slice(n + 1)) {
      const [ax, ay, bx, by] = [at[0] - a[0], at[1] - a[1], b[0] - at[0], b[1] - at[1]];
      const bend = (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const aside = Math.abs(ax * (b[1] - a[1]) - ay * (b[0] - a[0])) / length;
      // The narrow place lies beside the axis where the line leads round: the bend there is no bend of the strip.
      const worth = bend + 0.01 * length + (aside > 0.55 * usualMm ? -1 : 0);
      if (worth <= least) continue;
      least = worth;
      best = [a, b];
    }
  });
  return best;
}

/** mm beyond a narrow place to which the way into another strip's side is followed. */
const beyond = 1.6;

/** From a strip that runs up to the narrow place on and straight into the side of what lies beyond it. */
function intoSide({ lines }: Piece, at: Point): Pick<Notch, 'path' | 'widthMm'> | undefined {
  let best: Pick<Notch, 'path' | 'widthMm'> | undefined;
  let least = Infinity;
  for (const { path, widths } of lines) {
    for (let k = 3; k < path.length - 3; k++) {
      const a = path[k];
      const d = Math.hypot(at[0] - a[0], at[1] - a[1]);
      if (d < nearest || d > farthest) continue;
      const [tx, ty] = [path[k + 3][0] - path[k - 3][0], path[k + 3][1] - path[k - 3][1]];
      const length = Math.hypot(tx, ty);
      const along = ((at[0] - a[0]) * tx + (at[1] - a[1]) * ty) / length;
      const aside = Math.abs((at[0] - a[0]) * ty - (at[1] - a[1]) * tx) / length;
      if (aside > 0.55 * widths[k] || aside + 0.1 * d >= least) continue;
      least = aside + 0.1 * d;
      const far = Math.sign(along) * (Math.abs(along) + beyond);
      best = { path: [a, [a[0] + (far * tx) / length, a[1] + (far * ty) / length]], widthMm: widths[k] };
    }
  }
  return best;
}
