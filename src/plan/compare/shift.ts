import type { Bitmap } from './bitmap.ts';

/** A whole-picture move: plan pixel = built pixel + (dx, dy). */
export interface Shift {
  dx: number;
  dy: number;
}

/** How much conductor each block holds, 0..255. */
interface Level {
  width: number;
  height: number;
  grey: Uint8Array;
}

const FINEST = 2;
const COARSEST = 8;
const KEEP = 4;

/**
 * The move, even pixels, that lays the built picture best on the plan: least mean difference over the overlap,
 * searched coarse to fine (blocks of 8, 4, 2 px; the bend that follows does the rest), the four best places of the
 * coarsest level all followed down so that a repeated pattern cannot win by its coarse look.
 * @param reachPx how far the pictures may lie apart
 */
export function findShift(built: Bitmap, plan: Bitmap, reachPx: number): Shift {
  const levels: [Level, Level][] = [[halved(asLevel(built)), halved(asLevel(plan))]];
  for (let size = FINEST; size < COARSEST; size *= 2) {
    const [b, p] = levels[levels.length - 1];
    levels.push([halved(b), halved(p)]);
  }
  let candidates = everyPlace(levels[levels.length - 1], Math.ceil(reachPx / COARSEST));
  for (let level = levels.length - 2; level >= 0; level--) {
    candidates = distinct(candidates.map(({ dx, dy }) => settle(levels[level], { dx: dx * 2, dy: dy * 2 })));
  }
  const { dx, dy } = best(levels[0], candidates);
  return { dx: dx * FINEST, dy: dy * FINEST };
}

function everyPlace(pair: [Level, Level], reach: number): Shift[] {
  const found: { at: Shift; cost: number }[] = [];
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) found.push({ at: { dx, dy }, cost: cost(pair, { dx, dy }) });
  }
  found.sort((a, b) => a.cost - b.cost);
  return found.slice(0, KEEP).map(({ at }) => at);
}

/** Walks downhill from a place until no neighbour is better. */
function settle(pair: [Level, Level], from: Shift): Shift {
  let here = from;
  let low = cost(pair, here);
  for (let walked = 0; walked < 6; walked++) {
    let next = here;
    for (const move of neighbours(here)) {
      const c = cost(pair, move);
      if (c < low) [low, next] = [c, move];
    }
    if (next === here) break;
    here = next;
  }
  return here;
}

function neighbours({ dx, dy }: Shift): Shift[] {
  const around: Shift[] = [];
  for (let y = -1; y <= 1; y++) {
    for (let x = -1; x <= 1; x++) if (x || y) around.push({ dx: dx + x, dy: dy + y });
  }
  return around;
}

function distinct(places: Shift[]): Shift[] {
  return [...new Map(places.map((p) => [`${p.dx},${p.dy}`, p])).values()];
}

function best(pair: [Level, Level], places: Shift[]): Shift {
  const costs = places.map((p) => cost(pair, p));
  return places[costs.indexOf(Math.min(...costs))];
}

/** Mean difference over the overlap. */
function cost([built, plan]: [Level, Level], { dx, dy }: Shift): number {
  const x0 = Math.max(0, -dx);
  const x1 = Math.min(built.width, plan.width - dx);
  const y0 = Math.max(0, -dy);
  const y1 = Math.min(built.height, plan.height - dy);
  if (x1 - x0 < built.width / 4 || y1 - y0 < built.height / 4) return Infinity;
  let sum = 0;
  for (let y = y0; y < y1; y++) {
    const b = y * built.width;
    const p = (y + dy) * plan.width + dx;
    for (let x = x0; x < x1; x++) sum += Math.abs(built.grey[b + x] - plan.grey[p + x]);
  }
  return sum / ((y1 - y0) * (x1 - x0));
}

function asLevel({ width, height, on }: Bitmap): Level {
  return { width, height, grey: on.map((v) => (v ? 255 : 0)) };
}

/** Means of blocks of 2 x 2. */
function halved({ width, height, grey }: Level): Level {
  const w = width >> 1;
  const h = height >> 1;
  const half = new Uint8Array(w * h);
  for (let y = 0; y < h; y++) {
    for (let x = 0, i = 2 * y * width; x < w; x++, i += 2) {
      half[y * w + x] = (grey[i] + grey[i + 1] + grey[i + width] + grey[i + width + 1]) >> 2;
    }
  }
  return { width: w, height: h, grey: half };
}
