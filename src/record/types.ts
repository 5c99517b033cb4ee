import type { Card } from '../card/index.ts';
import type { Netlist } from '../net/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import type { Traced } from '../trace/index.ts';
import type { EncodedImage } from './drawing/types.ts';
import type { StepPhoto } from './steps.ts';

/** What a record is made from; a finished check has all of it. */
export interface Recordable {
  photo: { name: string; width: number; height: number };
  card: Card;
  outline: Outline;
  sheet: SquaredSheet;
  traced: Traced;
  /** Further photographs as they were laid on the base. */
  joined?: { fates: { name: string; sheet: string; by: string; residualMm: number }[] };
  netlist: Netlist;
  verdict: 'clear' | 'clear-once-checked' | 'hold';
  timingsMs: Partial<Record<string, number>>;
}

/** Pictures for a record, already encoded, so that record/ needs neither a canvas nor a codec. */
export interface RecordImages {
  /** The squared sheet, the whole of it. */
  squared?: EncodedImage;
  /** Photographs by step, in order, with the day they were taken. */
  steps?: StepPhoto[];
}
