import type { Card } from '../card/index.ts';
import type { CopperMask, LearnedMap } from '../copper/index.ts';
import type { Netlist, Verdict } from '../net/index.ts';
import type { ScaleTold } from '../parts/scale/index.ts';
import type { Suggested } from '../parts/suggest/index.ts';
import type { Photo } from '../photo/index.ts';
import type { PlanComparison } from '../plan/index.ts';
import type { PowerReport } from '../power/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import type { JoinedSheets, PlacedSheet } from './sheets/index.ts';
import type { ShotFate } from './shots.ts';
import type { Traced } from '../trace/index.ts';

export type { Verdict };

export type StageName = 'decode' | 'square' | 'copper' | 'trace' | 'net' | 'power';

/** The copper of a sheet as it is seen without the maker's taps: kept, so that a tap or a part moved costs no second look by the nets. */
export interface Untaught {
  mask: CopperMask;
  learned?: LearnedMap;
  suggested: Suggested;
  /** What of the card it hangs on. */
  of: string;
}

/** Everything that one check gives, stage by stage; each stage can be renewed from its own on. */
export interface Checked {
  photo: Pick<Photo, 'name' | 'width' | 'height'>;
  card: Card;
  outline: Outline;
  sheet: SquaredSheet;
  /** What became of further shots of the same sheet; empty where there was one. */
  shots: ShotFate[];
  /** The base's own squared picture, where `sheet` shows further sheets too. */
  own?: SquaredSheet;
  /** Further sheets of the card in their own frames, and all laid together; absent where there is one photograph. */
  placed?: PlacedSheet[];
  joined?: JoinedSheets;
  /** The copper as seen, before any touch-up stroke. */
  seen: CopperMask;
  /** By sheet, before the taps. */
  untaught: ReadonlyMap<SquaredSheet, Untaught>;
  /** Lamps and the cell as the photograph of the base shows them; nothing of it counts until the card has it. */
  suggested: Suggested;
  mask: CopperMask;
  traced: Traced;
  /** The scale as cell, lamps or tape tell it, where the card states a size of theirs. */
  scale?: ScaleTold;
  netlist: Netlist;
  /** The build against the card's plan, where it has one. */
  compared?: PlanComparison;
  power: PowerReport;
  verdict: Verdict;
  timingsMs: Record<StageName, number>;
}
