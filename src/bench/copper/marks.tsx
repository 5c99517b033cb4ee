import type { TouchUp } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** A stroke while it is being painted. */
export function StrokeMark({ stroke, view }: { stroke: TouchUp; view: View }) {
  const points = stroke.path.map((place) => toScreen(view, place));
  const [first] = points;
  const line = [...points, first.map((v) => v + 0.01)].map((point) => point.join(',')).join(' ');
  const drawn = points.length > 1 ? points.map((point) => point.join(',')).join(' ') : line;
  return (
    <polyline className={`stroke ${stroke.do}`} points={drawn} strokeWidth={stroke.width_mm * view.scale} />
  );
}

/** Where the maker has said "this is tape" or "this is paper". */
export function TeachMarks({
  taps,
  kind,
  view,
}: {
  taps: readonly Point[];
  kind: 'tape' | 'paper';
  view: View;
}) {
  return taps.map((tap, i) => {
    const [x, y] = toScreen(view, tap);
    return (
      <g key={i} className={`teach-mark ${kind}`} transform={`translate(${x} ${y})`}>
        <rect x={-9} y={-9} width={18} height={18} />
        <text textAnchor="middle" y={4}>
          {i + 1}
        </text>
      </g>
    );
  });
}
