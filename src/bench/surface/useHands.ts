import { useGesture } from '@use-gesture/react';
import { useRef, type RefObject } from 'react';
import type { Point } from '../../geometry/index.ts';
import type { Grip, Tool } from './tool.ts';
import { held, toContent, zoomedAbout, type Content, type View, type Zoom } from './view.ts';

interface Hands {
  box: { width: number; height: number };
  content: Content;
  view: View;
  zoom: Zoom;
  setZoom: (zoom: Zoom) => void;
  tool: Tool;
}

/** How near a finger hits, px. */
const fingerPx = 24;

/** One finger or the mouse works the tool, or shifts the picture; two fingers or the wheel zoom it. */
export function useHands(ref: RefObject<HTMLDivElement | null>, hands: Hands): void {
  const { box, content, view, zoom, setZoom, tool } = hands;
  const grip = useRef<Grip | undefined>(undefined);
  const place = (x: number, y: number): Point => {
    const { left = 0, top = 0 } = ref.current?.getBoundingClientRect() ?? {};
    return [x - left, y - top];
  };
  const show = (next: Zoom) => setZoom(held(next, content, box, view.scale / zoom.by));
  useGesture(
    {
      onDrag: ({ first, last, tap, pinching, canceled, delta, xy, initial, cancel }) => {
        if (pinching) {
          grip.current?.cancel?.();
          grip.current = undefined;
          return cancel();
        }
        const at = toContent(view, place(xy[0], xy[1]));
        if (tap) {
          grip.current?.cancel?.();
          grip.current = undefined;
          return tool.tap?.(at);
        }
        if (first) {
          const from = toContent(view, place(initial[0], initial[1]));
          grip.current = tool.grab?.(from, fingerPx / view.scale);
        }
        if (!grip.current) return show({ ...zoom, x: zoom.x + delta[0], y: zoom.y + delta[1] });
        if (canceled) grip.current.cancel?.();
        else grip.current.move(at);
        if (last) {
          if (!canceled) grip.current.end();
          grip.current = undefined;
        }
      },
      onPinch: ({ origin, offset: [by], movement: _m, memo, first }) => {
        const start = first ? zoom : (memo as Zoom);
        const [cx, cy] = place(origin[0], origin[1]);
        show(zoomedAbout(zoom, by / zoom.by, [cx - box.width / 2, cy - box.height / 2]));
        return start;
      },
      onWheel: ({ event, delta: [, dy] }) => {
        if (!event.ctrlKey && zoom.by === 1 && dy > 0) return;
        event.preventDefault();
        const [cx, cy] = place(event.clientX, event.clientY);
        show(zoomedAbout(zoom, Math.exp(-dy / 400), [cx - box.width / 2, cy - box.height / 2]));
      },
    },
    {
      target: ref,
      drag: { filterTaps: true, tapsThreshold: 4, pointer: { keys: false } },
      pinch: { scaleBounds: { min: 1, max: 24 }, from: () => [zoom.by, 0] },
      wheel: { eventOptions: { passive: false } },
    },
  );
}
