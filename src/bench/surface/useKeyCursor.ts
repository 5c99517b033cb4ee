import { useRef, useState, type FocusEvent, type KeyboardEvent } from 'react';
import type { Point } from '../../geometry/index.ts';
import { keySteps } from './keySteps.ts';
import type { Grip, Tool } from './tool.ts';
import type { Content, View } from './view.ts';

interface Options {
  content: Content;
  unit: 'mm' | 'px';
  tool: Tool;
  view: View;
  enabled: boolean;
}

export interface KeyCursor {
  cursor: Point | undefined;
  holding: boolean;
  onKeyDown(event: KeyboardEvent): void;
  onFocus(event: FocusEvent): void;
  onBlur(): void;
}

/**
 * A cross-hair moved by arrows (Shift: far, Alt: fine). Enter taps there; Space takes hold of what lies there, arrows
 * then move it, Space lets go, Escape drops it.
 */
export function useKeyCursor({ content, unit, tool, view, enabled }: Options): KeyCursor | undefined {
  const [cursor, setCursor] = useState<Point>();
  const [holding, setHolding] = useState(false);
  const last = useRef<Point | undefined>(undefined);
  const grip = useRef<Grip | undefined>(undefined);
  if (!enabled) return undefined;
  const start = (): Point =>
    last.current ?? [content.origin[0] + content.width / 2, content.origin[1] + content.height / 2];
  const show = (at: Point) => {
    last.current = at;
    setCursor(at);
  };
  const letGo = (keep: boolean) => {
    if (keep) grip.current?.end();
    else grip.current?.cancel?.();
    grip.current = undefined;
    setHolding(false);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey) return;
    const at = cursor ?? start();
    const moved = arrow(event, at, keySteps(unit));
    if (moved) {
      const inside = within(moved, content);
      show(inside);
      grip.current?.move(inside);
    } else if (event.key === 'Enter') {
      show(at);
      tool.tap?.(at);
    } else if (event.key === ' ') {
      show(at);
      if (grip.current) letGo(true);
      else {
        grip.current = tool.grab?.(at, 12 / view.scale);
        setHolding(grip.current !== undefined);
      }
    } else if (event.key === 'Escape' && grip.current) letGo(false);
    else return;
    event.preventDefault();
  };
  return {
    cursor,
    holding,
    onKeyDown,
    onFocus: (event) => {
      if (event.target === event.currentTarget && event.target.matches(':focus-visible')) show(start());
    },
    onBlur: () => {
      if (grip.current) letGo(true);
      setCursor(undefined);
    },
  };
}

/** Where an arrow key leads from a place; undefined for other keys. */
export function arrow(
  { key, shiftKey, altKey }: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey'>,
  [x, y]: Point,
  { usual, far, fine }: { usual: number; far: number; fine: number },
): Point | undefined {
  const step = shiftKey ? far : altKey ? fine : usual;
  if (key === 'ArrowLeft') return [x - step, y];
  if (key === 'ArrowRight') return [x + step, y];
  if (key === 'ArrowUp') return [x, y - step];
  if (key === 'ArrowDown') return [x, y + step];
  return undefined;
}

function within([x, y]: Point, { origin, width, height }: Content): Point {
  return [
    Math.min(origin[0] + width, Math.max(origin[0], x)),
    Math.min(origin[1] + height, Math.max(origin[1], y)),
  ];
}
