import type { PlanStrip } from '../../card/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { trace } from '../../trace/index.ts';
import { planFromTraced } from './planFromTraced.ts';
import { sketchMask } from './sketchMask.ts';

/**
 * A plan out of a photograph of a pencil sketch: its strokes are where tape is to run.
 * @param sheet the sketch squared up, 5 px/mm is enough
 * @param widthMm width of the tape that will be laid; pencil tells none
 */
export function planFromSketch(sheet: SquaredSheet, widthMm: number): PlanStrip[] {
  return planFromTraced(trace(sketchMask(sheet), sheet)).map((strip) => ({ ...strip, width_mm: widthMm }));
}
