import type { Card, PlanStrip } from '../../card/index.ts';
import type { FrontMiss, PlanChecks, PrintPaper, Routed } from '../../plan/index.ts';

/** Calls of step Plan. None of them touches the photograph that is checked. */
export interface PlanCalls {
  /** Live checks of the plan as drawn. */
  planChecks: { ask: { card: Card }; answer: PlanChecks };
  suggestRoute: { ask: { card: Card }; answer: Routed };
  planFromSketch: { ask: { card: Card; name: string; file: Blob; widthMm: number }; answer: PlanStrip[] };
  printPlan: { ask: { card: Card; paper: PrintPaper }; answer: Blob };
  /** A picture made small enough to be kept in the card. */
  readArtwork: {
    ask: { name: string; file: Blob };
    answer: { width: number; height: number; base64: string };
  };
  checkFront: {
    ask: { card: Card; name: string; file: Blob; side: 'back' | 'face' };
    /** `picture` the front squared up, turned so that it lies on the base as it will be glued; `sure` its edges were. */
    answer: { misses: FrontMiss[]; picture: ImageBitmap; sure: boolean };
  };
}

export type PlanCallName = keyof PlanCalls;

const names: Record<PlanCallName, true> = {
  planChecks: true,
  suggestRoute: true,
  planFromSketch: true,
  printPlan: true,
  readArtwork: true,
  checkFront: true,
};

export function isPlanCall(call: string): call is PlanCallName {
  return call in names;
}
