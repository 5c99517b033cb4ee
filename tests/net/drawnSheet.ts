import type { CopperMask } from '../../src/copper/index.ts';
import type { Point, Ring } from '../../src/geometry/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { trace, type Traced } from '../../src/trace/index.ts';

/** What lies on a drawn sheet, in the order of laying. mm. */
export type Laid =
  | { copper: 'strip'; path: readonly Point[]; widthMm: number }
  | { copper: 'ring'; ring: Ring }
  | { paper: 'ring'; ring: Ring }
  | { paper: 'disc'; at: Point; radiusMm: number };

export interface DrawnSheet {
  width: number;
  height: number;
  marginMm?: number;
  laid: Laid[];
}

const pxPerMm = 10;
const paper = [236, 233, 228];
const copper = [196, 132, 92];

export function strip(widthMm: number, ...path: Point[]): Laid {
  return { copper: 'strip', path, widthMm };
}

/** A rectangle cleared of copper: a cut, a lamp's body. */
export function clear(x0: number, y0: number, x1: number, y1: number): Laid {
  return { paper: 'ring', ring: rectangle(x0, y0, x1, y1) };
}

export function rectangle(x0: number, y0: number, x1: number, y1: number): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** Draws flat copper on flat paper, unblurred, and traces it with its picture. */
export function traceDrawn(drawn: DrawnSheet): Traced {
  const margin = drawn.marginMm ?? 0;
  const size = {
    width: Math.round((drawn.width + 2 * margin) * pxPerMm),
    height: Math.round((drawn.height + 2 * margin) * pxPerMm),
  };
  const filled = new Uint8Array(size.width * size.height);
  for (const each of drawn.laid) {
    const [x0, y0, x1, y1] = boxOf(each).map((mm) => Math.round((mm + margin) * pxPerMm));
    for (let j = Math.max(0, y0); j < Math.min(size.height, y1); j++) {
      for (let i = Math.max(0, x0); i < Math.min(size.width, x1); i++) {
        const p: Point = [(i + 0.5) / pxPerMm - margin, (j + 0.5) / pxPerMm - margin];
        if (covers(each, p)) filled[j * size.width + i] = 'copper' in each ? 1 : 0;
      }
    }
  }
  return traceMask(filled, {
    ...size,
    marginMm: margin,
    baseMm: { width: drawn.width, height: drawn.height },
  });
}

/** Traces a mask at 10 px/mm, with a flat picture of it. */
export function traceMask(
  filled: Uint8Array,
  of: { width: number; height: number; marginMm: number; baseMm: { width: number; height: number } },
): Traced {
  const frame = {
    width: of.width,
    height: of.height,
    pxPerMm,
    originMm: [-of.marginMm, -of.marginMm] as const,
    baseMm: of.baseMm,
  };
  const rgb = new Uint8Array(filled.length * 3);
  filled.forEach((on, k) => rgb.set(on ? copper : paper, 3 * k));
  const sheet: SquaredSheet = { ...frame, rgb, toPhoto: [10, 0, 0, 0, 10, 0, 0, 0, 1], photoPxPerMm: 10 };
  const mask: CopperMask = {
    ...frame,
    filled,
    strict: filled,
    likelihood: filled.map((on) => 255 * on),
    readable: 1,
    troubles: [],
    by: 'given',
  };
  return trace(mask, sheet);
}

function boxOf(each: Laid): [number, number, number, number] {
  const points = 'path' in each ? each.path : 'ring' in each ? each.ring : [each.at];
  const more = 'widthMm' in each ? each.widthMm : 'radiusMm' in each ? each.radiusMm : 0;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs) - more, Math.min(...ys) - more, Math.max(...xs) + more, Math.max(...ys) + more];
}

function covers(each: Laid, p: Point): boolean {
  if ('paper' in each && each.paper === 'disc') {
    return Math.hypot(p[0] - each.at[0], p[1] - each.at[1]) <= each.radiusMm;
  }
  if ('ring' in each) return inside(each.ring, p);
  const strips = each as Extract<Laid, { copper: 'strip' }>;
  return strips.path.some((_, k) => k > 0 && onBand(strips.path, k, strips.widthMm / 2, p));
}

/** Square ends; a corner is filled out to the width. */
function onBand(path: readonly Point[], k: number, half: number, p: Point): boolean {
  const [a, b] = [path[k - 1], path[k]];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length;
  const across = ((p[1] - a[1]) * (b[0] - a[0]) - (p[0] - a[0]) * (b[1] - a[1])) / length;
  const before = k > 1 ? half : 0;
  const after = k + 1 < path.length ? half : 0;
  return Math.abs(across) <= half && along >= -before && along <= length + after;
}

/** Even-odd rule. */
function inside(ring: Ring, [x, y]: Point): boolean {
  let odd = false;
  ring.forEach(([x1, y1], k) => {
    const [x0, y0] = ring[(k + ring.length - 1) % ring.length];
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) odd = !odd;
  });
  return odd;
}
