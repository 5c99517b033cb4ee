import { rulerTicks } from './rulerTicks.ts';
import { toScreen, type Content, type View } from './view.ts';

/** Crop marks, and a ruler in the chosen unit along the sheet's top and left edges. */
export function Rulers({
  view,
  content,
  baseMm,
}: {
  view: View;
  content: Content;
  baseMm: { width: number; height: number };
}) {
  const [x0, y0] = toScreen(view, [0, 0]);
  const [x1, y1] = toScreen(view, [baseMm.width, baseMm.height]);
  const along = content.width > 0 ? rulerTicks(baseMm.width, view.scale) : [];
  const down = rulerTicks(baseMm.height, view.scale);
  return (
    <g className="rulers">
      <path
        d={[
          `M${x0 - 14} ${y0}h10M${x0} ${y0 - 14}v10M${x1 + 4} ${y0}h10M${x1} ${y0 - 14}v10`,
          `M${x0 - 14} ${y1}h10M${x0} ${y1 + 4}v10M${x1 + 4} ${y1}h10M${x1} ${y1 + 4}v10`,
        ].join('')}
      />
      {along.map(({ mm, long }) => (
        <path key={`x${mm}`} d={`M${x0 + mm * view.scale} ${y0 - 3}v${long ? -6 : -3}`} />
      ))}
      {down.map(({ mm, long }) => (
        <path key={`y${mm}`} d={`M${x0 - 3} ${y0 + mm * view.scale}h${long ? -6 : -3}`} />
      ))}
      {along.map(
        ({ mm, figure }) =>
          figure && (
            <text key={`t${mm}`} x={x0 + mm * view.scale} y={y0 - 12} textAnchor="middle">
              {figure}
            </text>
          ),
      )}
      {down.map(
        ({ mm, figure }) =>
          figure && (
            <text
              key={`s${mm}`}
              transform={`translate(${x0 - 12} ${y0 + mm * view.scale}) rotate(-90)`}
              textAnchor="middle"
            >
              {figure}
            </text>
          ),
      )}
    </g>
  );
}
