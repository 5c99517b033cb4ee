import { useEffect, useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import type { Point } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { Surface } from '../surface/Surface.tsx';
import { arrow } from '../surface/useKeyCursor.ts';
import { toScreen, type View } from '../surface/view.ts';
import { Loupe } from './Loupe.tsx';

const steps = { usual: 1, far: 10, fine: 0.1 };
/** A row of key presses is laid down as one step after this rest, ms. */
const restMs = 400;

interface Props {
  label: string;
  url: string | undefined;
  /** Of the photograph, px. */
  size: { width: number; height: number };
  /** Where the handles stand, px of the photograph. */
  points: readonly Point[];
  names: readonly string[];
  /** A class beside each handle's own. */
  looks?: readonly string[];
  /** Takes all points once a drag or a row of keys has ended. @param i the one that was moved */
  lay(points: Point[], i: number): void;
  /** Drawn over the photograph as the points lie now. */
  marks(points: readonly Point[], view: View): ReactNode;
}

/** A photograph with places on it, to be dragged or moved by keys, with a loupe. */
export function HandleSurface({ label, url, size, points, names, looks, lay, marks }: Props) {
  const [draft, setDraft] = useState<Point[]>();
  const [active, setActive] = useState<number>();
  const handles = useRef<(HTMLButtonElement | null)[]>([]);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const now = draft ?? points;
  const latest = useRef<readonly Point[]>(now);
  useEffect(() => setDraft(undefined), [points]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const move = (i: number, to: Point) => {
    const moved = now.map((point, k) => (k === i ? inside(to, size) : point));
    latest.current = moved;
    setDraft(moved);
  };
  const grab = (at: Point, reach: number) => {
    const i = nearest(now, at);
    if (Math.hypot(now[i][0] - at[0], now[i][1] - at[1]) > reach * 1.5) return undefined;
    const [dx, dy] = [now[i][0] - at[0], now[i][1] - at[1]];
    setActive(i);
    handles.current[i]?.focus();
    return {
      move: ([x, y]: Point) => move(i, [x + dx, y + dy]),
      end: () => lay([...latest.current], i),
      cancel: () => setDraft(undefined),
    };
  };
  const onKey = (event: KeyboardEvent, i: number) => {
    const to = arrow(event, now[i], steps);
    if (!to) return;
    event.preventDefault();
    move(i, to);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => lay([...latest.current], i), restMs);
  };
  return (
    <Surface
      label={label}
      unit="px"
      content={{ ...size, origin: [0, 0] }}
      margin={6}
      keyCursor={false}
      tool={{ grab }}
      layers={(view) => url && <PhotoLayer url={url} size={size} view={view} />}
      marks={(view) => marks(now, view)}
      handles={(view) => (
        <>
          {now.map((point, i) => (
            <button
              key={i}
              ref={(element) => void (handles.current[i] = element)}
              type="button"
              className={`corner ${looks?.[i] ?? ''}`}
              style={place(toScreen(view, point))}
              aria-label={`${names[i]}, ${words.square.cornerAt(point[0], point[1])}`}
              aria-description={words.square.cornerKeys}
              onFocus={() => setActive(i)}
              onBlur={() => setActive(undefined)}
              onKeyDown={(event) => onKey(event, i)}
            />
          ))}
          {active !== undefined && url && <Loupe url={url} size={size} at={now[active]} scale={view.scale} />}
        </>
      )}
    />
  );
}

function PhotoLayer({ url, size, view }: { url: string; size: Props['size']; view: View }) {
  const transform = `translate(${view.x}px, ${view.y}px) scale(${view.scale})`;
  return (
    <img
      className="layer"
      src={url}
      alt={words.photoAlt}
      draggable={false}
      style={{ width: size.width, height: size.height, transform }}
    />
  );
}

function place([x, y]: Point) {
  return { left: x, top: y };
}

function nearest(points: readonly Point[], [x, y]: Point): number {
  const far = points.map(([cx, cy]) => Math.hypot(cx - x, cy - y));
  return far.indexOf(Math.min(...far));
}

function inside([x, y]: Point, { width, height }: Props['size']): Point {
  return [Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))];
}
