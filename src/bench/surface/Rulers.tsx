import { toScreen, type Content, type View } from './view.ts';

/** Crop marks, and a ruler in mm along the sheet's top and left edges. */
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
  const every = view.scale * 10 < 9 ? 50 : 10;
  const marks = (length: number) =>
    Array.from({ length: Math.floor(length / every) + 1 }, (_, i) => i * every);
  return (
    <g className="rulers">
      <path
        d={[
          `M${x0 - 14} ${y0}h10M${x0} ${y0 - 14}v10M${x1 + 4} ${y0}h10M${x1} ${y0 - 14}v10`,
          `M${x0 - 14} ${y1}h10M${x0} ${y1 + 4}v10M${x1 + 4} ${y1}h10M${x1} ${y1 + 4}v10`,
        ].join('')}
      />
      {marks(baseMm.width).map((mm) => (
        <path key={`x${mm}`} d={`M${x0 + mm * view.scale} ${y0 - 3}v${mm % 50 === 0 ? -6 : -3}`} />
      ))}
      {marks(baseMm.height).map((mm) => (
        <path key={`y${mm}`} d={`M${x0 - 3} ${y0 + mm * view.scale}h${mm % 50 === 0 ? -6 : -3}`} />
      ))}
      {content.width > 0 &&
        marks(baseMm.width)
          .filter((mm) => mm % 50 === 0 && mm > 0)
          .map((mm) => (
            <text key={`t${mm}`} x={x0 + mm * view.scale} y={y0 - 12} textAnchor="middle">
              {mm}
            </text>
          ))}
      {marks(baseMm.height)
        .filter((mm) => mm % 50 === 0 && mm > 0)
        .map((mm) => (
          <text
            key={`s${mm}`}
            transform={`translate(${x0 - 12} ${y0 + mm * view.scale}) rotate(-90)`}
            textAnchor="middle"
          >
            {mm}
          </text>
        ))}
    </g>
  );
}
