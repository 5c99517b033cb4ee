import { useMemo, type CSSProperties } from 'react';
import type { Card } from '../../card/index.ts';
import { artworkMatrix, baseSize } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import type { Shown } from '../state/types.ts';
import { useBitmap } from '../surface/useBitmap.ts';
import { toScreen, type View } from '../surface/view.ts';
import type { Artwork } from './artworkEdits.ts';

/** The blank base, to scale. */
export function Paper({ card, view }: { card: Card; view: View }) {
  const [x, y] = toScreen(view, [0, 0]);
  const { width, height } = baseSize(card);
  return (
    <div
      className="plan-paper"
      style={{ left: x, top: y, width: width * view.scale, height: height * view.scale }}
    />
  );
}

/** The front's artwork, wherever its corners put it. */
export function ArtworkLayer({
  artwork,
  card,
  view,
  fade,
}: {
  artwork: Artwork;
  card: Card;
  view: View;
  fade: number;
}) {
  const { base64, corners } = artwork;
  const url = useMemo(() => `data:image/jpeg;base64,${base64}`, [base64]);
  const matrix = artworkMatrix(corners, baseSize(card), view.scale, toScreen(view, [0, 0]));
  return (
    <img
      className="layer"
      src={url}
      alt={planWords.page.artworkAlt}
      draggable={false}
      style={{ transform: `matrix3d(${matrix.join(',')})`, opacity: fade }}
    />
  );
}

/** A squared picture on the base, shown from its left side up to a share of the base's width. */
export function PictureLayer({
  picture,
  sheet,
  view,
  share = 1,
}: {
  picture: ImageBitmap;
  sheet: Pick<Shown['sheet'], 'originMm' | 'pxPerMm' | 'baseMm'>;
  view: View;
  share?: number;
}) {
  const ref = useBitmap(picture);
  const { originMm, pxPerMm, baseMm } = sheet;
  const [x, y] = toScreen(view, originMm);
  const upTo = (share * baseMm.width - originMm[0]) * pxPerMm;
  const style: CSSProperties = {
    transform: `translate(${x}px, ${y}px) scale(${view.scale / pxPerMm})`,
    clipPath: share < 1 ? `inset(0 ${Math.max(0, picture.width - upTo)}px 0 0)` : undefined,
  };
  return <canvas ref={ref} className="layer" style={style} />;
}
