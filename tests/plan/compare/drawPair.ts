import type { Bitmap } from '../../../src/plan/compare/bitmap.ts';
import type { MaskFaultKind } from '../../../src/plan/compare/index.ts';

/** A seeded generator of numbers in [0, 1): the 32-bit mixer mulberry32, public domain. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface DrawnFault {
  kind: MaskFaultKind;
  x: number;
  y: number;
}

export interface DrawnPair {
  plan: Bitmap;
  built: Bitmap;
  faults: DrawnFault[];
}

const SIZE = 480;
const LANES = 6;

/**
 * A plan of level strips with pads, and a build of it: moved, gently bent, its edges a little swollen, with faults of
 * the kinds asked for, one a lane.
 */
export function drawPair(seed: number, kinds: MaskFaultKind[]): DrawnPair {
  const random = seeded(seed);
  const plan = new Uint8Array(SIZE * SIZE);
  for (let lane = 0; lane < LANES; lane++) {
    const y = laneY(lane);
    rect(plan, 40, y - 9, SIZE - 40, y + 9, 1);
    disc(plan, 40 + 40 * lane, y, 20, 1);
    rect(plan, 200 + 30 * lane, y + 8, 212 + 30 * lane, y + 26, 1);
  }
  const spoilt = plan.slice();
  const faults = kinds.map((kind, k) => plant(spoilt, kind, k % LANES, random));
  const move = { x: Math.round(random() * 24 - 12), y: Math.round(random() * 24 - 12) };
  const bend = random() * 2.5;
  const at = (x: number, y: number) => ({
    x: x + move.x + bend * Math.sin((y / SIZE) * 4),
    y: y + move.y + bend * Math.cos((x / SIZE) * 4),
  });
  const built = new Uint8Array(SIZE * SIZE);
  for (let y = 0; y < SIZE; y++) {
    for (let x = 0; x < SIZE; x++) {
      const from = at(x, y);
      const X = Math.round(from.x);
      const Y = Math.round(from.y);
      if (X >= 0 && Y >= 0 && X < SIZE && Y < SIZE) built[y * SIZE + x] = spoilt[Y * SIZE + X];
    }
  }
  const placed = faults.map((f) => ({ ...f, x: f.x - move.x, y: f.y - move.y }));
  return { plan: picture(plan), built: picture(built), faults: placed };
}

function picture(on: Uint8Array): Bitmap {
  return { width: SIZE, height: SIZE, on };
}

const laneY = (lane: number) => 60 + 72 * lane;

function plant(on: Uint8Array, kind: MaskFaultKind, lane: number, random: () => number): DrawnFault {
  const y = laneY(lane);
  const x = 310 + Math.round(random() * 90);
  const size = 5 + Math.round(random() * 4);
  if (kind === 'open') rect(on, x - 3, y - 12, x + 3, y + 12, 0);
  if (kind === 'nibble') disc(on, x, y - 9, size, 0);
  if (kind === 'pin-hole') disc(on, x, y, 4, 0);
  if (kind === 'spur') rect(on, x - 4, y - 9 - 12, x + 4, y - 8, 1);
  const beside = lane === LANES - 1 ? -36 : 36;
  if (kind === 'stray') disc(on, x, y + beside, size, 1);
  if (kind === 'short') rect(on, x - 3, Math.min(y, y + 2 * beside), x + 3, Math.max(y, y + 2 * beside), 1);
  if (kind === 'stray' || kind === 'short') return { kind, x, y: y + beside };
  return { kind, x, y: kind === 'nibble' ? y - 7 : kind === 'spur' ? y - 15 : y };
}

function rect(on: Uint8Array, x0: number, y0: number, x1: number, y1: number, value: 0 | 1): void {
  for (let y = y0; y < y1; y++) on.fill(value, y * SIZE + x0, y * SIZE + x1);
}

function disc(on: Uint8Array, cx: number, cy: number, r: number, value: 0 | 1): void {
  for (let y = cy - r; y <= cy + r; y++) {
    for (let x = cx - r; x <= cx + r; x++) {
      if ((x - cx) ** 2 + (y - cy) ** 2 <= r * r) on[y * SIZE + x] = value;
    }
  }
}
