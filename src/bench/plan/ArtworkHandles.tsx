import type { Card } from '../../card/index.ts';
import { artworkEdges, baseSize } from '../../plan/index.ts';
import { benchWords } from '../../words/bench.ts';
import { planWords } from '../../words/plan.ts';
import '../square/square.css';
import { editCard } from '../state/editCard.ts';
import { arrow } from '../surface/useKeyCursor.ts';
import { toScreen, type View } from '../surface/view.ts';
import { artworkOf, artworkPulled } from './artworkEdits.ts';

interface Props {
  card: Card;
  /** Of the artwork, px. */
  picture: { width: number; height: number };
  view: View;
}

const stepsMm = { usual: 1, far: 10, fine: 0.1 };

/** The artwork's corners: dragged by hand (by the plan's tool), moved by keys here. */
export function ArtworkHandles({ card, picture, view }: Props) {
  const artwork = artworkOf(card);
  if (!artwork) return null;
  return artworkEdges(artwork.corners, baseSize(card), picture).map((at, k) => {
    const [left, top] = toScreen(view, at);
    return (
      <button
        key={k}
        type="button"
        className="corner"
        style={{ left, top }}
        aria-label={planWords.page.artworkCorner(benchWords.square.corners[k])}
        aria-description={planWords.page.artworkCornerKeys}
        onKeyDown={(event) => {
          const to = arrow(event, at, stepsMm);
          if (!to) return;
          event.preventDefault();
          event.stopPropagation();
          editCard((now) => artworkPulled(now, picture, k, to));
        }}
      />
    );
  });
}
