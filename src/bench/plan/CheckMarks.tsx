import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { FrontMiss } from '../../plan/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** A crossing that no patch parts. */
export function CrossingMark({ at, view }: { at: Point; view: View }) {
  const [x, y] = toScreen(view, at);
  return (
    <g className="plan-crossing-mark" transform={`translate(${x} ${y})`}>
      <circle r={13} />
      <path d="M-7-7L7 7M7-7L-7 7" />
    </g>
  );
}

/** Holes of a punched front, and how far each misses its lamp. */
export function FrontMarks({ card, misses, view }: { card: Card; misses: FrontMiss[]; view: View }) {
  return misses.map(({ lamp, hole, ok }) => {
    const found = card.lamps.find(({ id }) => id === lamp);
    if (!found) return null;
    const { plus, minus } = found;
    const at = toScreen(view, [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2]);
    const to = hole && toScreen(view, hole.at);
    return (
      <g key={lamp} className={ok ? 'plan-hole' : 'plan-hole missed'}>
        {to && <circle cx={to[0]} cy={to[1]} r={Math.max(4, (hole.diameterMm / 2) * view.scale)} />}
        {to && !ok && <path d={`M${at.join(' ')}L${to.join(' ')}`} />}
        {!hole && <path d={`M${at[0] - 9} ${at[1] - 9}l18 18m0-18l-18 18`} />}
      </g>
    );
  });
}

/** Places tapped so far, and a box under way. */
export function Taps({
  taps,
  box,
  view,
}: {
  taps: Point[];
  box: readonly [Point, Point] | undefined;
  view: View;
}) {
  const ring = box && box.map((p) => toScreen(view, p));
  return (
    <>
      {taps.map((at, k) => {
        const [x, y] = toScreen(view, at);
        return <path key={k} className="plan-tap" d={`M${x - 8} ${y}h16M${x} ${y - 8}v16`} />;
      })}
      {ring && (
        <rect
          className="plan-box"
          x={Math.min(ring[0][0], ring[1][0])}
          y={Math.min(ring[0][1], ring[1][1])}
          width={Math.abs(ring[1][0] - ring[0][0])}
          height={Math.abs(ring[1][1] - ring[0][1])}
        />
      )}
    </>
  );
}
