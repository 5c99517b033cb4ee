import type { Point } from '../geometry/index.ts';
import { necksOf } from './necks.ts';
import type { Piece } from './types.ts';

/** mm of strip before and after a narrow place that the straight way over it takes in. */
const back = 4;
/** Less of the strip's usual width than this left: the line may lead round a cut. */
const narrow = 0.45;

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
      const line = piece.lines.find(({ path }) => path.includes(at));
      if (!line) return [];
      const { path, widths } = line;
      const k = path.indexOf(at);
      const wide = (n: number): boolean => widths[n] > 0.85 * usualMm;
      const [from, to] = [wideFrom(k, -1, path, wide), wideFrom(k, 1, path, wide)];
      if (from < 0 || to < 0) return [];
      const [a, b] = [path[from], path[to]];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      return length < 1 ? [] : [{ piece: piece.id, path: [a, b], widthMm: usualMm }];
    });
}

/** The first place `back` mm beyond where the strip has its width again; -1 where the line ends before. */
function wideFrom(k: number, step: 1 | -1, path: readonly Point[], wide: (n: number) => boolean): number {
  while (k >= 0 && k < path.length && !wide(k)) k += step;
  const beyond = k + step * Math.round(back / 0.5);
  const last = step > 0 ? path.length - 1 : 0;
  if (k < 0 || k >= path.length) return -1;
  return step > 0 ? Math.min(beyond, last) : Math.max(beyond, last);
}
