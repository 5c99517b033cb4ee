import type { Card } from '../../card/index.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import { artworkEdges, baseSize } from '../../plan/index.ts';
import { editCard } from '../state/editCard.ts';
import { bench } from '../state/store.ts';
import type { Grip, Tool } from '../surface/tool.ts';
import { artworkLaid, artworkOf, artworkPulled, artworkShifted } from './artworkEdits.ts';

/** How the artwork is being placed: by its four corners, or by two places whose distance is known. */
export interface Placing {
  by: 'corners' | 'measure';
  taps: Point[];
}

/** Taps of a placing under way, or a drag: of one of the picture's corners, else of the whole picture. */
export function artworkTool(
  placing: Placing | undefined,
  setPlacing: (placing: Placing | undefined) => void,
  setMoved: (card: Card | undefined) => void,
  picture: { width: number; height: number } | undefined,
): Tool {
  if (!placing) {
    return {
      grab: (from, reach) => {
        const k = picture && cornerAt(bench().card, picture, from, reach);
        if (!picture || k === undefined)
          return drag(setMoved, (card, [x, y]) => artworkShifted(card, [x - from[0], y - from[1]]));
        return drag(setMoved, (card, to) => artworkPulled(card, picture, k, to));
      },
    };
  }
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

function cornerAt(
  card: Card,
  picture: { width: number; height: number },
  [x, y]: Point,
  reach: number,
): number | undefined {
  const artwork = artworkOf(card);
  if (!artwork) return undefined;
  const far = artworkEdges(artwork.corners, baseSize(card), picture).map(([u, v]) =>
    Math.hypot(u - x, v - y),
  );
  const least = Math.min(...far);
  return least <= reach ? far.indexOf(least) : undefined;
}

function drag(setMoved: (card: Card | undefined) => void, change: (card: Card, to: Point) => Card): Grip {
  let moved: Card | undefined;
  return {
    move: (to) => {
      moved = change(bench().card, to);
      setMoved(moved);
    },
    end: () => {
      setMoved(undefined);
      if (moved) editCard(() => moved as Card);
    },
    cancel: () => setMoved(undefined),
  };
}
