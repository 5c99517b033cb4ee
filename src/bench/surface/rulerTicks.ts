import { inchMm, unit } from '../../words/lengths.ts';

export interface RulerTick {
  mm: number;
  long: boolean;
  /** The figure beside it, in the chosen unit. */
  figure?: string;
}

/** Ticks no nearer than this can be told apart, figures no nearer than that, px. */
const apartPx = { ticks: 9, figures: 26 };
/** Distances of short and of long ticks, the first that leave room: mm by tens, inches by quarters. */
const mmSteps = [
  [10, 50],
  [50, 100],
  [100, 500],
] as const;
const inchSteps = [
  [0.25, 1],
  [1, 5],
  [5, 10],
] as const;

/**
 * Ticks of a ruler along an edge, in mm or inches.
 * @param lengthMm of the edge
 * @param scale px per mm on the screen
 */
export function rulerTicks(lengthMm: number, scale: number): RulerTick[] {
  const unitMm = unit() === 'mm' ? 1 : inchMm;
  const steps = unit() === 'mm' ? mmSteps : inchSteps;
  const [short, long] =
    steps.find(([each]) => each * unitMm * scale >= apartPx.ticks) ?? steps[steps.length - 1];
  const perLong = Math.round(long / short);
  const perFigure = perLong * Math.max(1, Math.ceil(apartPx.figures / (long * unitMm * scale)));
  const count = Math.floor(lengthMm / (short * unitMm) + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => ({
    mm: i * short * unitMm,
    long: i % perLong === 0,
    figure: i > 0 && i % perFigure === 0 ? String(i * short) : undefined,
  }));
}
