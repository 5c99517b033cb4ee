import type { Point } from '../../geometry/index.ts';
import { toScreen, type View } from './view.ts';

/** The keyboard's place on the picture; thick while it holds something. */
export function Crosshair({ view, at, held }: { view: View; at: Point; held: boolean }) {
  const [x, y] = toScreen(view, at);
  return (
    <g className={held ? 'crosshair held' : 'crosshair'} transform={`translate(${x} ${y})`}>
      <path className="under" d="M-18 0H-5M5 0H18M0-18V-5M0 5V18" />
      <path className="over" d="M-18 0H-5M5 0H18M0-18V-5M0 5V18" />
      <circle className="over" r={held ? 5 : 2} />
    </g>
  );
}
