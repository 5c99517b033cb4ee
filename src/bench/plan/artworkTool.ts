import type { Card } from '../../card/index.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import { editCard } from '../state/editCard.ts';
import { bench } from '../state/store.ts';
import type { Tool } from '../surface/tool.ts';
import { artworkLaid, artworkShifted } from './artworkEdits.ts';

/** How the artwork is being placed: by its four corners, or by two places whose distance is known. */
export interface Placing {
  by: 'corners' | 'measure';
  taps: Point[];
}

/** Taps of a placing under way, or a drag that shifts the picture. */
export function artworkTool(
  placing: Placing | undefined,
  setPlacing: (placing: Placing | undefined) => void,
  setMoved: (card: Card | undefined) => void,
): Tool {
  if (!placing) return { grab: (from) => shift(from, setMoved) };
  return {
    tap: (at) => {
      const taps = [...placing.taps, at];
      if (placing.by === 'measure') return setPlacing({ ...placing, taps: taps.slice(-2) });
      if (taps.length < 4) return setPlacing({ ...placing, taps });
      setPlacing(undefined);
      editCard((card) => artworkLaid(card, taps as unknown as Quad));
    },
  };
}

function shift([x, y]: Point, setMoved: (card: Card | undefined) => void) {
  let moved: Card | undefined;
  return {
    move: (to: Point) => {
      moved = artworkShifted(bench().card, [to[0] - x, to[1] - y]);
      setMoved(moved);
    },
    end: () => {
      setMoved(undefined);
      if (moved) editCard(() => moved as Card);
    },
    cancel: () => setMoved(undefined),
  };
}
