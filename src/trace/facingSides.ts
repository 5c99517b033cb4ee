import type { Point } from '../geometry/index.ts';
import type { Facing } from './facing.ts';
import { toPx, type Frame } from './frame.ts';
import type { Clearance } from './types.ts';

/** mm: no tape is wider, and what faces over less is a corner. */
const widest = 9.5;
const narrowest = 1.2;
/** mm between places asked, mm within the copper at which its width is taken, mm of copper that the way takes in. */
const step = 0.2;
const inside = 0.6;
const back = 4;

/**
 * Cuts that no pair of free ends tells, as close beside a branch: two pieces near each other whose facing sides are as
 * wide as a tape, and which are both no wider than that just behind them. A strip that ends before a rail's side is none.
 */
export function facingSides(clearances: readonly Clearance[], labels: Int32Array, frame: Frame): Facing[] {
  const pieceAt = (x: number, y: number): number => {
    const [i, j] = toPx(frame, [x, y]).map(Math.floor);
    if (i < 0 || j < 0 || i >= frame.width || j >= frame.height) return 0;
    return labels[j * frame.width + i];
  };
  return clearances.flatMap(({ a, b, atA, atB, mm }) => {
    const length = Math.hypot(atB[0] - atA[0], atB[1] - atA[1]);
    if (length < 0.2) return [];
    const along: Point = [(atB[0] - atA[0]) / length, (atB[1] - atA[1]) / length];
    const across: Point = [-along[1], along[0]];
    const middle: Point = [(atA[0] + atB[0]) / 2, (atA[1] + atB[1]) / 2];
    const at = (u: number, v: number): Point => [
      middle[0] + u * along[0] + v * across[0],
      middle[1] + u * along[1] + v * across[1],
    ];
    const spanOf = (test: (v: number) => boolean): [number, number] => {
      let [low, high] = [0, 0];
      while (low > -widest && test(low - step)) low -= step;
      while (high < widest && test(high + step)) high += step;
      return [low, high];
    };
    const depth = length / 2 + inside;
    const onA = (v: number): boolean => pieceAt(...at(-depth, v)) === a;
    const onB = (v: number): boolean => pieceAt(...at(depth, v)) === b;
    const open = (v: number): boolean => pieceAt(...at(0, v)) === 0;
    const [sideA, sideB] = [spanOf(onA), spanOf(onB)];
    const facing = spanOf((v) => onA(v) && onB(v) && open(v));
    const widthMm = facing[1] - facing[0];
    const widths = [sideA, sideB].map(([low, high]) => high - low);
    if (widthMm < narrowest || widths.some((width) => width > widest || widthMm < 0.6 * width)) return [];
    const centre = (facing[0] + facing[1]) / 2;
    const path = [at(-length / 2 - back, centre), at(length / 2 + back, centre)];
    const half = mm / 2;
    return [{ a: { piece: a, at: at(-half, centre) }, b: { piece: b, at: at(half, centre) }, path, widthMm }];
  });
}
