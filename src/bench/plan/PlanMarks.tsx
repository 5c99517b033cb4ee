import type { ReactNode } from 'react';
import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { lengthOf } from '../../plan/index.ts';
import { PartMarks } from '../parts/PartMarks.tsx';
import { toScreen, type View } from '../surface/view.ts';
import type { Picked } from './picked.ts';
import { stripsOf } from './planEdits.ts';

interface Props {
  card: Card;
  view: View;
  picked: Picked | undefined;
  /** The + end of a lamp whose − end is awaited. */
  plus: Point | undefined;
  /** Strips under way or proposed: over the plan, under the parts. */
  children: ReactNode;
}

/** The plan on the screen: strips at their width in the order of laying, patches, flaps, parts. */
export function PlanMarks({ card, view, picked, plus, children }: Props) {
  const part = picked?.kind === 'part' ? picked.id : undefined;
  return (
    <>
      {card.flaps.map(({ id, outline, fold }) => (
        <g key={id} className={picked?.kind === 'flap' && picked.id === id ? 'plan-flap here' : 'plan-flap'}>
          <polygon points={points(outline, view)} />
          <path className="fold" d={line(fold, view)} />
          <Name text={id} at={middle(outline)} view={view} />
        </g>
      ))}
      {stripsOf(card).map((strip, k) => {
        const here = picked?.kind === 'strip' && picked.id === strip.id;
        return (
          <g key={strip.id}>
            <Tape
              path={strip.path}
              widthMm={strip.width_mm}
              view={view}
              kind={here ? 'planned here' : 'planned'}
            />
            {here ? (
              <Corners path={strip.path} corner={picked.corner} view={view} />
            ) : (
              <Order number={k + 1} path={strip.path} view={view} />
            )}
          </g>
        );
      })}
      {card.patches.map(({ id, outline }) => (
        <g
          key={id}
          className={picked?.kind === 'patch' && picked.id === id ? 'plan-patch here' : 'plan-patch'}
        >
          <polygon points={points(outline, view)} />
          <Name text={id} at={middle(outline)} view={view} />
        </g>
      ))}
      {children}
      <PartMarks card={card} view={view} part={part} plus={plus} />
    </>
  );
}

/** Tape at its true width. */
export function Tape({
  path,
  widthMm,
  view,
  kind,
}: {
  path: readonly Point[];
  widthMm: number;
  view: View;
  kind: string;
}) {
  if (path.length === 1) {
    const [x, y] = toScreen(view, path[0]);
    return <circle className={`tape-dot ${kind}`} cx={x} cy={y} r={5} />;
  }
  return (
    <g className={`tape ${kind}`}>
      <path className="rim" d={line(path, view)} style={{ strokeWidth: widthMm * view.scale }} />
      <path
        className="foil"
        d={line(path, view)}
        style={{ strokeWidth: Math.max(1, widthMm * view.scale - 2) }}
      />
    </g>
  );
}

function Corners({ path, corner, view }: { path: readonly Point[]; corner?: number; view: View }) {
  return path.map((at, k) => {
    const [x, y] = toScreen(view, at);
    return (
      <circle key={k} className={k === corner ? 'plan-corner here' : 'plan-corner'} cx={x} cy={y} r={6} />
    );
  });
}

function Order({ number, path, view }: { number: number; path: readonly Point[]; view: View }) {
  const [x, y] = toScreen(view, halfWay(path));
  return (
    <text className="plan-order" x={x} y={y + 4} textAnchor="middle">
      {number}
    </text>
  );
}

function Name({ text, at, view }: { text: string; at: Point; view: View }) {
  const [x, y] = toScreen(view, at);
  return (
    <text className="part-name" x={x} y={y + 4} textAnchor="middle">
      {text}
    </text>
  );
}

/** The place half-way along a path. */
function halfWay(path: readonly Point[]): Point {
  let left = lengthOf(path) / 2;
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const span = lengthOf([a, b]);
    if (span >= left && span > 0)
      return [a[0] + ((b[0] - a[0]) * left) / span, a[1] + ((b[1] - a[1]) * left) / span];
    left -= span;
  }
  return path[0];
}

function middle(ring: readonly Point[]): Point {
  const sum = ring.reduce(([x, y], p): Point => [x + p[0], y + p[1]], [0, 0] as Point);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

const points = (ring: readonly Point[], view: View) => ring.map((p) => toScreen(view, p).join(',')).join(' ');

const line = (path: readonly Point[], view: View) =>
  `M${path.map((p) => toScreen(view, p).join(' ')).join('L')}`;
