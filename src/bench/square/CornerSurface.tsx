import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import type { Point, Quad } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { usePhotoUrl } from '../page/usePhotoUrl.ts';
import type { Shot } from '../state/types.ts';
import { Surface } from '../surface/Surface.tsx';
import { arrow } from '../surface/useKeyCursor.ts';
import { toScreen, type View } from '../surface/view.ts';
import { layCorners } from './edits.ts';
import { Loupe } from './Loupe.tsx';

const steps = { usual: 1, far: 10, fine: 0.1 };
/** A row of key presses is laid down as one step after this rest, ms. */
const restMs = 400;

/** The photograph with the base's corners, to be dragged or moved by keys, with a loupe. */
export function CornerSurface({ shot, corners }: { shot: Shot; corners: Quad }) {
  const url = usePhotoUrl();
  const [draft, setDraft] = useState<Quad>();
  const [active, setActive] = useState<number>();
  const handles = useRef<(HTMLButtonElement | null)[]>([]);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const now = draft ?? corners;
  const latest = useRef(now);
  useEffect(() => setDraft(undefined), [corners]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const move = (i: number, to: Point) => {
    latest.current = now.map((corner, k) => (k === i ? inside(to, shot) : corner)) as unknown as Quad;
    setDraft(latest.current);
  };
  const grab = (at: Point, reach: number) => {
    const i = nearest(now, at);
    if (Math.hypot(now[i][0] - at[0], now[i][1] - at[1]) > reach * 1.5) return undefined;
    const [dx, dy] = [now[i][0] - at[0], now[i][1] - at[1]];
    setActive(i);
    handles.current[i]?.focus();
    return {
      move: ([x, y]: Point) => move(i, [x + dx, y + dy]),
      end: () => layCorners(latest.current),
      cancel: () => setDraft(undefined),
    };
  };
  const onKey = (event: KeyboardEvent, i: number) => {
    const to = arrow(event, now[i], steps);
    if (!to) return;
    event.preventDefault();
    move(i, to);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => layCorners(latest.current), restMs);
  };
  return (
    <Surface
      label={words.square.photoLabel}
      unit="px"
      content={{ width: shot.width, height: shot.height, origin: [0, 0] }}
      margin={6}
      keyCursor={false}
      tool={{ grab }}
      layers={(view) => url && <PhotoLayer url={url} shot={shot} view={view} />}
      marks={(view) => <Frame corners={now} view={view} />}
      handles={(view) => (
        <>
          {now.map((corner, i) => (
            <button
              key={i}
              ref={(element) => void (handles.current[i] = element)}
              type="button"
              className="corner"
              style={place(toScreen(view, corner))}
              aria-label={`${words.square.corners[i]}, ${words.square.cornerAt(corner[0], corner[1])}`}
              aria-description={words.square.cornerKeys}
              onFocus={() => setActive(i)}
              onBlur={() => setActive(undefined)}
              onKeyDown={(event) => onKey(event, i)}
            />
          ))}
          {active !== undefined && url && (
            <Loupe url={url} shot={shot} at={now[active]} scale={view.scale} corner={active} />
          )}
        </>
      )}
    />
  );
}

function PhotoLayer({ url, shot, view }: { url: string; shot: Shot; view: View }) {
  const transform = `translate(${view.x}px, ${view.y}px) scale(${view.scale})`;
  return (
    <img
      className="layer"
      src={url}
      alt={words.photoAlt}
      draggable={false}
      style={{ width: shot.width, height: shot.height, transform }}
    />
  );
}

function Frame({ corners, view }: { corners: Quad; view: View }) {
  const points = corners.map((corner) => toScreen(view, corner).join(',')).join(' ');
  return (
    <g className="base-frame">
      <polygon className="under" points={points} />
      <polygon className="over" points={points} />
    </g>
  );
}

function place([x, y]: Point) {
  return { left: x, top: y };
}

function nearest(corners: Quad, [x, y]: Point): number {
  const far = corners.map(([cx, cy]) => Math.hypot(cx - x, cy - y));
  return far.indexOf(Math.min(...far));
}

function inside([x, y]: Point, { width, height }: Shot): Point {
  return [Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))];
}
