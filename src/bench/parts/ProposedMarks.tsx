import type { Suggested } from '../../parts/suggest/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** Dashed outlines where a lamp or the cell seems to lie. */
export function ProposedMarks({ proposed: { lamps, cell }, view }: { proposed: Suggested; view: View }) {
  return (
    <g className="proposed">
      {lamps.map(({ plus, minus }) => {
        const [a, b] = [toScreen(view, plus), toScreen(view, minus)];
        const angle = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
        const long = Math.hypot(b[0] - a[0], b[1] - a[1]) + 12;
        const middle = `translate(${(a[0] + b[0]) / 2} ${(a[1] + b[1]) / 2}) rotate(${angle})`;
        const box = { x: -long / 2, y: -9, width: long, height: 18, rx: 4 };
        return (
          <g key={plus.join()} transform={middle}>
            <rect className="under" {...box} />
            <rect className="over" {...box} />
          </g>
        );
      })}
      {cell && (
        <g transform={`translate(${toScreen(view, cell.at).join(' ')})`}>
          <circle className="under" r={(cell.diameterMm / 2) * view.scale} />
          <circle className="over" r={(cell.diameterMm / 2) * view.scale} />
        </g>
      )}
    </g>
  );
}
