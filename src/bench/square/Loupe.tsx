import type { Point } from '../../geometry/index.ts';
import type { Shot } from '../state/types.ts';

const sizePx = 132;
/** Screen px a photo px is shown with, at least. */
const leastScale = 2;

interface Props {
  url: string;
  shot: Shot;
  at: Point;
  /** Scale of the picture under it. */
  scale: number;
  corner: number;
}

/** The place round a corner, enlarged, at the side where the finger is not. */
export function Loupe({ url, shot, at, scale, corner }: Props) {
  const zoom = Math.max(leastScale, scale * 5);
  const transform = `translate(${sizePx / 2 - at[0] * zoom}px, ${sizePx / 2 - at[1] * zoom}px) scale(${zoom})`;
  return (
    <div className={corner === 0 || corner === 3 ? 'loupe right' : 'loupe'} aria-hidden="true">
      <img src={url} alt="" style={{ width: shot.width, height: shot.height, transform }} />
      <svg viewBox="-50 -50 100 100">
        <path className="under" d="M-50 0H-6M6 0H50M0-50V-6M0 6V50" />
        <path className="over" d="M-50 0H-6M6 0H50M0-50V-6M0 6V50" />
      </svg>
    </div>
  );
}
