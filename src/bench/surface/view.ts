import type { Point } from '../../geometry/index.ts';

/** How content lies in the surface: screen = offset + scale * (content - origin), px of the surface's own box. */
export interface View {
  scale: number;
  x: number;
  y: number;
  origin: Point;
}

/** What is shown: its size and origin in its own unit (mm of the sheet, px of the photograph). */
export interface Content {
  width: number;
  height: number;
  origin: Point;
}

/** The maker's own zoom and shift on top of the fit. */
export interface Zoom {
  by: number;
  x: number;
  y: number;
}

export const unzoomed: Zoom = { by: 1, x: 0, y: 0 };

const mostZoom = 24;

/** Content fitted into a box with a margin all round, then zoomed. */
export function viewOf(
  content: Content,
  box: { width: number; height: number },
  margin: number,
  zoom: Zoom,
): View {
  const fit = Math.max(
    0.01,
    Math.min((box.width - 2 * margin) / content.width, (box.height - 2 * margin) / content.height),
  );
  const scale = fit * zoom.by;
  return {
    scale,
    x: box.width / 2 - (content.width * scale) / 2 + zoom.x,
    y: box.height / 2 - (content.height * scale) / 2 + zoom.y,
    origin: content.origin,
  };
}

export function toScreen({ scale, x, y, origin }: View, [px, py]: Point): Point {
  return [x + (px - origin[0]) * scale, y + (py - origin[1]) * scale];
}

export function toContent({ scale, x, y, origin }: View, [sx, sy]: Point): Point {
  return [origin[0] + (sx - x) / scale, origin[1] + (sy - y) / scale];
}

/** Zoomed by a factor about a place of the box, px from its centre, which stays where it is. */
export function zoomedAbout(zoom: Zoom, factor: number, [cx, cy]: Point): Zoom {
  const by = Math.min(mostZoom, Math.max(1, zoom.by * factor));
  const k = by / zoom.by;
  if (by === 1) return unzoomed;
  return { by, x: cx - (cx - zoom.x) * k, y: cy - (cy - zoom.y) * k };
}

/** A shift that keeps some of the content in sight. */
export function held(
  zoom: Zoom,
  content: Content,
  box: { width: number; height: number },
  fit: number,
): Zoom {
  const roomX = Math.max(0, (content.width * fit * zoom.by - box.width) / 2 + 40);
  const roomY = Math.max(0, (content.height * fit * zoom.by - box.height) / 2 + 40);
  if (zoom.by === 1) return unzoomed;
  const clamp = (v: number, room: number) => Math.min(room, Math.max(-room, v));
  return { by: zoom.by, x: clamp(zoom.x, roomX), y: clamp(zoom.y, roomY) };
}
