import { useRef, useState, type CSSProperties, type ReactNode } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { Crosshair } from './Crosshair.tsx';
import { sayKeys } from './keySteps.ts';
import type { Tool } from './tool.ts';
import { useBox } from './useBox.ts';
import { useHands } from './useHands.ts';
import { useKeyCursor } from './useKeyCursor.ts';
import { unzoomed, viewOf, zoomedAbout, type Content, type View, type Zoom } from './view.ts';

interface Props {
  label: string;
  content: Content;
  /** 'mm' or 'px': how places are told. */
  unit: 'mm' | 'px';
  /** Room left for marks round the content, px. */
  margin?: number;
  tool?: Tool;
  /** Layers that move with the content (canvas, img), drawn at content size 1:1 by CSS transforms. */
  layers: (view: View) => ReactNode;
  /** Drawn over them in screen px, as SVG. */
  marks?: (view: View) => ReactNode;
  /** Focusable things over the picture, absolutely placed in screen px. */
  handles?: (view: View) => ReactNode;
  /** The keyboard's cross-hair; off where handles take the keys. */
  keyCursor?: boolean;
  /** One finger paints: the page must not scroll under it. */
  holdsFinger?: boolean;
  /** A line at the foot of the sheet: what it is. */
  slug?: string;
}

/** A picture under the hands: pinch, wheel and drag to look closer; taps and drags go to the step's tool. */
export function Surface(props: Props) {
  const { label, content, unit, margin = 0, tool = {}, layers, marks, handles, holdsFinger, slug } = props;
  const ref = useRef<HTMLDivElement>(null);
  const box = useBox(ref);
  const [zoom, setZoom] = useState<Zoom>(unzoomed);
  const view = viewOf(content, box, margin, zoom);
  useHands(ref, { box, content, view, zoom, setZoom, tool });
  const keys = useKeyCursor({ content, unit, tool, view, enabled: props.keyCursor ?? true });
  const closer = (factor: number) => setZoom((now) => zoomedAbout(now, factor, [0, 0]));
  const free = !holdsFinger && zoom.by === 1;
  return (
    <figure className="surface" style={shape(content)}>
      <div
        ref={ref}
        className={free ? 'surface-box free' : 'surface-box'}
        style={{ height: ((box.width - 2 * margin) * content.height) / content.width + 2 * margin }}
        role={keys ? 'application' : 'group'}
        aria-label={label}
        aria-describedby={keys ? 'surface-keys' : undefined}
        aria-roledescription={keys ? words.surface.role : undefined}
        tabIndex={keys ? 0 : undefined}
        onKeyDown={keys?.onKeyDown}
        onFocus={keys?.onFocus}
        onBlur={keys?.onBlur}
      >
        {layers(view)}
        <svg className="surface-marks" width={box.width} height={box.height} aria-hidden="true">
          {marks?.(view)}
          {keys?.cursor && <Crosshair view={view} at={keys.cursor} held={keys.holding} />}
        </svg>
        {handles?.(view)}
      </div>
      <figcaption className="surface-foot">
        {keys && (
          <span id="surface-keys" className="only-read">
            {sayKeys(unit)}
          </span>
        )}
        <span className="place" aria-live="polite">
          {keys?.cursor ? words.surface.place(keys.cursor, unit) : ''}
        </span>
        {!keys?.cursor && slug !== undefined && <span>{slug}</span>}
        <span className="closer">
          <button type="button" onClick={() => closer(1.6)}>
            {words.surface.closer}
          </button>
          <button type="button" onClick={() => closer(1 / 1.6)} disabled={zoom.by === 1}>
            {words.surface.farther}
          </button>
        </span>
      </figcaption>
    </figure>
  );
}

/** Box and foot are as broad as page and window allow for this shape. */
function shape({ width, height }: Content): CSSProperties {
  return { '--shape': width / height } as CSSProperties;
}
