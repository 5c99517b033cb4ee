import type { Point } from '../geometry/index.ts';
import { toPx, type Frame } from './frame.ts';

/** mm beyond a cut's border at which the copper on its sides is asked. */
const beyond = 0.4;

/** The pieces on the two sides of an open cut, 0 where there is none. @param along unit vector along the strip */
export function cutSides(
  labels: Int32Array,
  frame: Frame,
  { at, along, widthMm }: { at: Point; along: Point; widthMm: number },
): [number, number] {
  const pieceAt = (mm: number): number => {
    const [x, y] = toPx(frame, [at[0] + mm * along[0], at[1] + mm * along[1]]);
    return labels[Math.floor(y) * frame.width + Math.floor(x)] ?? 0;
  };
  const off = widthMm / 2 + beyond;
  return [pieceAt(-off), pieceAt(off)];
}
