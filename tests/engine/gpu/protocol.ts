/** A picture as a net takes it: 3 planes of side * side. */
export interface Question {
  planes: number[];
  side: number;
}

/** What both runners say of it. */
export interface Compared {
  /** Whether the played graphics processor is taken by a page too, which does not ask for one. */
  unasked: boolean;
  /** Whether the graphics processor was let take over every net, and how often it was then asked. */
  taken: boolean;
  asked: number;
  /** Largest difference of two logits. */
  apart: number;
  /** The same of a run in whose middle the device was lost, and how often the graphics processor has answered since. */
  apartOnceLost: number;
  askedOnceLost: number;
  /** Share of the pixels of the first map that both put on one side of even chances, 0..1. */
  alike: number;
  /** Share of them with more than even chances. */
  filled: number;
  /** One run, ms. */
  wasmMs: number;
  gpuMs: number;
}

/** What came of it, or why there is nothing. */
export type Told = Compared | { none: string } | { failed: string };

declare global {
  interface Window {
    compare(question: Question): Promise<Told>;
  }
}
