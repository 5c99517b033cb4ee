import type { Part } from './clusters.ts';
import { clusters, widen } from './clusters.ts';
import type { Registered } from './register.ts';

/** A place where the built picture has less conductor than the plan, or more. */
export interface Difference extends Part {
  sign: 'missing' | 'extra';
  /** No pixel of it is deeper than the tolerance: it counts only where it cuts or joins. */
  thin: boolean;
}

export interface Tolerance {
  /** Edges may lie this far off, px. */
  px: number;
  /** Differences nearer than this are one, px. */
  mergePx: number;
}

const LEAST_DEEP_PIXELS = 6;
const LEAST_THIN_PIXELS = 3;
/** A built gap this much deeper than the tolerance inside the plan counts although it is narrow. */
const INNER_EXTRA_PX = 0.5;
const TILE_PX = 32;

/** All differences of one sign: deep ones merged with their surroundings, then thin ones. */
export function differences(pair: Registered, sign: Difference['sign'], tolerance: Tolerance): Difference[] {
  const { width, height, plan, builtDistance, planDistance } = pair;
  const wanted = sign === 'missing' ? 1 : 0;
  const all = pair.differs.filter((i) => plan[i] === wanted);
  const seeds = all.filter((i) => {
    const depth =
      sign === 'extra' ? planDistance[i] : Math.max(builtDistance[i], -planDistance[i] - INNER_EXTRA_PX);
    return depth > tolerance.px;
  });
  const deep = grownWithin(seeds, all, pair, Math.ceil(tolerance.px));
  const whole = clusters(deep, width, height, tolerance.mergePx)
    .filter((p) => p.pixels.length >= LEAST_DEEP_PIXELS)
    .map((p) => ({ ...p, sign, thin: false }));
  const taken = new Set(deep);
  const slim = clusters(all, width, height, 1)
    .filter((p) => p.pixels.length >= LEAST_THIN_PIXELS && !p.pixels.some((i) => taken.has(i)))
    .flatMap((p) => tiles(p, width))
    .map((p) => ({ ...p, sign, thin: true }));
  return [...whole, ...slim];
}

/** The seeds and the differing pixels within some steps of them, in reading order. */
function grownWithin(seeds: number[], all: number[], { width, height }: Registered, steps: number): number[] {
  const open = new Uint8Array(width * height);
  for (const i of all) open[i] = 1;
  for (const i of seeds) open[i] = 0;
  const around = [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1];
  const grown = [...seeds];
  for (let step = 0, from = 0; step < steps; step++) {
    const end = grown.length;
    for (; from < end; from++) {
      for (const move of around) {
        const n = grown[from] + move;
        if (!open[n]) continue;
        open[n] = 0;
        grown.push(n);
      }
    }
  }
  return grown.sort((a, b) => a - b);
}

/** A long sliver along an edge, cut into tiles twice (the second time half a tile on) so that a cut in it stands alone. */
function tiles(part: Part, width: number): Part[] {
  const { box, pixels } = part;
  if (box.x1 - box.x0 <= TILE_PX && box.y1 - box.y0 <= TILE_PX) return [part];
  const cut = new Map<string, Part>();
  for (const offset of [0, TILE_PX / 2]) {
    for (const i of pixels) {
      const x = i % width;
      const y = (i - x) / width;
      const key = `${offset} ${Math.floor((x + offset) / TILE_PX)} ${Math.floor((y + offset) / TILE_PX)}`;
      const tile = cut.get(key) ?? { box: { x0: x, y0: y, x1: x + 1, y1: y + 1 }, pixels: [] };
      tile.pixels.push(i);
      widen(tile.box, x, y);
      cut.set(key, tile);
    }
  }
  return [...cut.values()];
}
