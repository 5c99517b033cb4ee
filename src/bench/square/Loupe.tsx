import type { Point } from '../../geometry/index.ts';

const sizePx = 132;
/** Screen px a photo px is shown with, at least. */
const leastScale = 2;

interface Props {
  url: string;
  /** Of the photograph, px. */
  size: { width: number; height: number };
  at: Point;
  /** Scale of the picture under it. */
  scale: number;
}

/** The place round a handle, enlarged, at the side where the finger is not. */
export function Loupe({ url, size, at, scale }: Props) {
  const zoom = Math.max(leastScale, scale * 5);
  const transform = `translate(${sizePx / 2 - at[0] * zoom}px, ${sizePx / 2 - at[1] * zoom}px) scale(${zoom})`;
  return (
    <div className={at[0] < size.width / 2 ? 'loupe right' : 'loupe'} aria-hidden="true">
      <img src={url} alt="" style={{ width: size.width, height: size.height, transform }} />
      <svg viewBox="-50 -50 100 100">
        <path className="under" d="M-50 0H-6M6 0H50M0-50V-6M0 6V50" />
        <path className="over" d="M-50 0H-6M6 0H50M0-50V-6M0 6V50" />
      </svg>
    </div>
  );
}
