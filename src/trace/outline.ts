import type { Point, Polygon } from '../geometry/index.ts';
import { toMm, type Frame, type PixelBox } from './frame.ts';
import { simplifyRing } from './simplify.ts';

/**
 * Border of one piece as polygons in mm. The border runs on the cracks between pixels, copper on its right; where two
 * pixels touch by a corner only they stay apart, as in the labelling. Midpoints of the cracks, smoothed, give the
 * sub-pixel line.
 * @param labels piece of each pixel, row-major
 */
export function outlineOf(labels: Int32Array, id: number, box: PixelBox, frame: Frame): Polygon {
  const rings = cracks(labels, id, box, frame).map((ring) =>
    simplifyRing(smoothRing(ring), 0.6).map(([x, y]) => toMm(frame, x, y)),
  );
  const [first, ...others] = rings;
  return { outer: first ?? [], holes: others };
}

/** Rings of crack midpoints, in pixels; the first is the outer one, as the topmost row starts on it. */
function cracks(labels: Int32Array, id: number, box: PixelBox, { width, height }: Frame): Point[][] {
  const columns = box.i1 - box.i0 + 1;
  const done = new Uint8Array(columns * (box.j1 - box.j0 + 1));
  const inside = (i: number, j: number): boolean =>
    i >= 0 && j >= 0 && i < width && j < height && labels[j * width + i] === id;
  const rings: Point[][] = [];
  for (let j = box.j0; j <= box.j1; j++) {
    for (let i = box.i0, k = j * width + i; i <= box.i1; i++, k++) {
      if (labels[k] !== id || (j > 0 && labels[k - width] === id)) continue;
      if (done[(j - box.j0) * columns + i - box.i0]) continue;
      rings.push(follow(i, j, inside, (u, v) => (done[(v - box.j0) * columns + u - box.i0] = 1)));
    }
  }
  return rings;
}

/** Steps along a crack: right, down, left, up. */
const steps = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

function follow(
  i: number,
  j: number,
  inside: (i: number, j: number) => boolean,
  visitTop: (i: number, j: number) => void,
): Point[] {
  const ring: Point[] = [];
  let [x, y, way] = [i, j, 0];
  do {
    const [dx, dy] = steps[way];
    ring.push([x + dx / 2, y + dy / 2]);
    if (way === 0) visitTop(x, y);
    x += dx;
    y += dy;
    const ahead = aheadOf(x, y, way);
    if (!inside(...ahead.right)) way = (way + 1) % 4;
    else if (inside(...ahead.left)) way = (way + 3) % 4;
  } while (x !== i || y !== j || way !== 0);
  return ring;
}

/** The two pixels that lie ahead of corner (x, y), right and left of the way. */
function aheadOf(x: number, y: number, way: number): { right: [number, number]; left: [number, number] } {
  if (way === 0) return { right: [x, y], left: [x, y - 1] };
  if (way === 1) return { right: [x - 1, y], left: [x, y] };
  if (way === 2) return { right: [x - 1, y - 1], left: [x - 1, y] };
  return { right: [x, y - 1], left: [x - 1, y - 1] };
}

/** Takes the staircase off: the mean of three neighbouring midpoints, 1-2-1. */
function smoothRing(ring: Point[]): Point[] {
  const n = ring.length;
  if (n < 8) return ring;
  return ring.map(([x, y], k) => {
    const [x0, y0] = ring[(k + n - 1) % n];
    const [x1, y1] = ring[(k + 1) % n];
    return [(x0 + 2 * x + x1) / 4, (y0 + 2 * y + y1) / 4];
  });
}
