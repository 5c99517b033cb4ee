import type { Point } from '../../geometry/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** The four edges between a sheet's corners. */
export function BaseFrame({ corners, view }: { corners: readonly Point[]; view: View }) {
  const points = corners.map((corner) => toScreen(view, corner).join(',')).join(' ');
  return (
    <g className="base-frame">
      <polygon className="under" points={points} />
      <polygon className="over" points={points} />
    </g>
  );
}
