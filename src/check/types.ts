import type { Card } from '../card/index.ts';
import type { CopperMask } from '../copper/index.ts';
import type { Netlist } from '../net/index.ts';
import type { Photo } from '../photo/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import type { Traced } from '../trace/index.ts';

export type Verdict = 'clear' | 'clear-once-checked' | 'hold';

export type StageName = 'decode' | 'square' | 'copper' | 'trace' | 'net' | 'power';

/** Everything that one check gives, stage by stage; each stage can be renewed from its own on. */
export interface Checked {
  photo: Pick<Photo, 'name' | 'width' | 'height'>;
  card: Card;
  outline: Outline;
  sheet: SquaredSheet;
  mask: CopperMask;
  traced: Traced;
  netlist: Netlist;
  verdict: Verdict;
  timingsMs: Record<StageName, number>;
}
