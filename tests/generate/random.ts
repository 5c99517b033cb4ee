/** A seeded source of numbers, so that every fixture can be made again. */
export interface Random {
  /** Uniform in [0, 1). */
  next(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Normal, mean 0, deviation 1. */
  normal(): number;
  pick<T>(of: readonly T[]): T;
}

/** Tommy Ettinger's mulberry32: 32 bits of state, enough for pictures. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number) => low + (high - low) * next();
  // Box-Muller; 1 - u keeps the logarithm finite.
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  return { next, between, normal, pick: (of) => of[Math.floor(next() * of.length)] };
}

/** A number in [0, 1) that depends only on the lattice place and the seed. */
export function hash(x: number, y: number, seed: number): number {
  let h = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1) ^ Math.imul(seed | 0, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Smooth value noise in [-1, 1], one feature a unit. */
export function noise(x: number, y: number, seed: number): number {
  const i = Math.floor(x);
  const j = Math.floor(y);
  const u = smooth(x - i);
  const v = smooth(y - j);
  const top = hash(i, j, seed) * (1 - u) + hash(i + 1, j, seed) * u;
  const bottom = hash(i, j + 1, seed) * (1 - u) + hash(i + 1, j + 1, seed) * u;
  return 2 * (top * (1 - v) + bottom * v) - 1;
}

function smooth(t: number): number {
  return t * t * (3 - 2 * t);
}
