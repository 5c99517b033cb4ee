import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Attached, PadPlace } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import type { LaidStrip } from './laidStrips.ts';
import type { State } from './types.ts';
import type { Wiring } from './wiring.ts';

/** All that a finding is made from. */
export interface Case {
  traced: Traced;
  card: Card;
  attached: Attached;
  wiring: Wiring;
  states: State[];
  /** The plan's strips laid over the built copper; empty without a plan. */
  laid: LaidStrip[];
}

export function padOf({ attached }: Pick<Case, 'attached'>, name: string): PadPlace | undefined {
  return attached.pads.find(({ pad }) => pad === name);
}

/** The pads of a contact: its id and one letter. */
export function contactPads({ attached }: Pick<Case, 'attached'>, id: string): PadPlace[] {
  return attached.pads.filter(
    ({ pad }) => pad.length === id.length + 1 && pad.startsWith(id) && /[a-z]$/.test(pad),
  );
}

/** Net of a piece at a place of it. */
export function netAt({ wiring }: Pick<Case, 'wiring'>, piece: number, at: Point): string {
  return wiring.netOfIsland[wiring.graph.islandAt(piece, at)];
}
