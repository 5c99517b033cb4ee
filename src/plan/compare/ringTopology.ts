import { grown } from './bitmap.ts';
import type { Difference } from './differences.ts';
import { components } from '../../copper/index.ts';
import type { Registered } from './register.ts';

export type MaskFaultKind = 'open' | 'short' | 'nibble' | 'spur' | 'pin-hole' | 'stray' | 'missing';

/** What the ring of pixels round a difference says. */
export interface RingVerdict {
  kind: MaskFaultKind;
  /** Open and short: one pixel of each of the two sides, index into the whole picture. */
  sides?: [number[], number[]];
}

const RING_PX = 5;
const RING_THICK_PX = 2;
/** Fewer ring pixels than this are noise at an edge, not a part. */
const LEAST_RING_PIXELS = 4;
const LEAST_PAPER_PIXELS = 3;

/**
 * Kind of a difference by what its surroundings were joined to in the plan and are joined to now: a missing place that
 * leaves one planned part in two is an open; an extra one that joins two is a short; else a hole closed all round is a
 * pin-hole, one open to paper a nibble; extra copper on one part is a spur, on none stray.
 */
export function ringVerdict(pair: Registered, difference: Difference): RingVerdict {
  const { box, pixels, sign, thin } = difference;
  const { width } = pair;
  const frame = grown(box, RING_PX, pair.width, pair.height);
  const w = frame.x1 - frame.x0;
  const h = frame.y1 - frame.y0;
  const own = spots(pixels, width, frame.x0, frame.y0, w);
  const near = stamped(own, RING_PX, w, h);
  const ring = ringOf(near, own, w, h);
  const plan = new Uint8Array(w * h);
  const copper = new Uint8Array(w * h);
  // A hair of copper left across a deep scratch is no way for a current: one pixel round it counts as gone.
  const gone = sign === 'missing' && !thin ? stamped(own, 1, w, h) : new Uint8Array(w * h);
  for (let k = 0; k < near.length; k++) {
    if (!near[k]) continue;
    const i = (frame.y0 + Math.floor(k / w)) * width + frame.x0 + (k % w);
    plan[k] = pair.plan[i];
    copper[k] = pair.built[i];
  }
  const planned = components(plan, w, h, 8).labels;
  const now = components(
    copper.map((on, k) => (on && !gone[k] ? 1 : 0)),
    w,
    h,
    8,
  ).labels;
  const [whole, parts] = sign === 'missing' ? [planned, now] : [now, planned];
  const sides = partsOfWhole(own, ring, whole, parts);
  const outward = (side: number[]) =>
    side.map((k) => (frame.y0 + Math.floor(k / w)) * width + frame.x0 + (k % w));
  if (sides.length >= 2) {
    return {
      kind: sign === 'missing' ? 'open' : 'short',
      sides: [outward(sides[0]), outward(sides[1])],
    };
  }
  if (sign === 'extra') return { kind: sides.length ? 'spur' : 'stray' };
  if (!sides.length) return { kind: 'missing' };
  return { kind: opensToPaper(own, near, copper, plan, w, h) ? 'nibble' : 'pin-hole' };
}

function spots(pixels: number[], width: number, x0: number, y0: number, w: number): number[] {
  return pixels.map((i) => (Math.floor(i / width) - y0) * w + (i % width) - x0);
}

/** All pixels within `reach` of the spots. */
function stamped(own: number[], reach: number, w: number, h: number): Uint8Array {
  const out = new Uint8Array(w * h);
  for (const k of own) {
    const x = k % w;
    const y = (k - x) / w;
    for (let dy = Math.max(-reach, -y); dy <= Math.min(reach, h - 1 - y); dy++) {
      for (let dx = Math.max(-reach, -x); dx <= Math.min(reach, w - 1 - x); dx++) {
        if (dx * dx + dy * dy <= reach * reach + 1) out[k + dy * w + dx] = 1;
      }
    }
  }
  return out;
}

function ringOf(near: Uint8Array, own: number[], w: number, h: number): Uint8Array {
  const inner = stamped(own, RING_PX - RING_THICK_PX, w, h);
  return near.map((v, k) => (v && !inner[k] ? 1 : 0));
}

/** The most parts that one whole touched by the difference has in the ring, each as its ring pixels. */
function partsOfWhole(own: number[], ring: Uint8Array, whole: Int32Array, parts: Int32Array): number[][] {
  const touched = new Set(own.map((k) => whole[k]));
  const found = new Map<number, Map<number, number[]>>();
  for (let k = 0; k < ring.length; k++) {
    if (!ring[k] || !whole[k] || !parts[k] || !touched.has(whole[k])) continue;
    const sides = found.get(whole[k]) ?? new Map<number, number[]>();
    found.set(whole[k], sides.set(parts[k], [...(sides.get(parts[k]) ?? []), k]));
  }
  let most: number[][] = [];
  for (const sides of found.values()) {
    const real = [...sides.values()].filter((side) => side.length >= LEAST_RING_PIXELS);
    if (real.length > most.length) most = real;
  }
  return most.sort((a, b) => b.length - a.length);
}

/** True where the hole in the built conductor runs out onto paper that the plan has too. */
function opensToPaper(
  own: number[],
  near: Uint8Array,
  copper: Uint8Array,
  plan: Uint8Array,
  w: number,
  h: number,
): boolean {
  const holes = near.map((inside, k) => (inside && !copper[k] ? 1 : 0));
  const { labels } = components(holes, w, h, 4);
  const touched = new Set(own.map((k) => labels[k]));
  let paper = 0;
  for (let k = 0; k < labels.length; k++) if (labels[k] && touched.has(labels[k]) && !plan[k]) paper++;
  return paper >= LEAST_PAPER_PIXELS;
}
