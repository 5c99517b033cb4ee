import type { LearnedMap } from '../copper/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import type { StageName } from './types.ts';

export interface CheckOptions {
  /** Where the base lies, when it is known: corners dragged by hand, or a truth. */
  outline?: Outline;
  /** Scale of the squared picture, px/mm; 10 unless given. */
  pxPerMm?: number;
  /** The learned segmenter: the trained net unless given; false leaves the classical one alone. */
  learned?: false | ((sheet: SquaredSheet) => Promise<LearnedMap | undefined>);
  /** How much is said of power; 'full' unless given. */
  depth?: 'states' | 'full';
  /** Told as each stage begins. */
  onStage?: (stage: StageName) => void;
}
