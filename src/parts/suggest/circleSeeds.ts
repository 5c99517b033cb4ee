import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { Circle } from './fitCircle.ts';
import { lightAt, smallLight } from './smallLight.ts';
import type { SmallLight } from './smallLight.ts';

/** Scale at which circles are looked for, px/mm: a rim is still three pixels of edge. */
const seedPxPerMm = 2.5;
/** Levels a pixel; less is paper. */
const leastGradient = 5;
/** Radii within this share of the one asked for vote with it: bevels, parallax, a scale a little wrong. */
const spread = 0.06;
/** Share of a disc's inside that may lie on edges: letters and glints do, strips and their facets far more. */
const mostEdges = 0.14;
/** Share of a circle that must have voted for it. */
const leastVoted = 0.2;

/**
 * Circles of about the given radii that are smooth within, the fullest first: each edge pixel votes for the places a
 * radius off along its gradient, to both sides.
 * @param most how many
 * @source C. Kimme, D. Ballard, J. Sklansky, Finding circles by an array of accumulators, CACM 18(2) 1975
 */
export function circleSeeds(sheet: SquaredSheet, radiiMm: readonly number[], most: number): Circle[] {
  const small = smallLight(sheet, seedPxPerMm);
  const edges = edgesOf(small);
  const found = radiiMm.flatMap((radius) => {
    const votes = cast(edges, small, radius * small.pxPerMm);
    return peaks(votes, small, radius * small.pxPerMm).map((peak) => ({ ...peak, radius }));
  });
  const smooth: Circle[] = [];
  for (const { x, y, radius } of found.sort((a, b) => b.share - a.share).slice(0, 10 * most)) {
    if (smooth.length === most) break;
    if (edgesWithin(small, x, y, 0.85 * radius * small.pxPerMm) <= mostEdges)
      smooth.push({ at: placeOf(sheet, small, x, y), radius });
  }
  return smooth;
}

function placeOf({ originMm }: SquaredSheet, { pxPerMm }: SmallLight, x: number, y: number): Point {
  return [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm];
}

interface Edge {
  x: number;
  y: number;
  /** Unit gradient. */
  ux: number;
  uy: number;
  weight: number;
}

function edgesOf(small: SmallLight): Edge[] {
  const edges: Edge[] = [];
  for (let y = 1; y < small.height - 1; y++) {
    for (let x = 1; x < small.width - 1; x++) {
      const { gx, gy, size } = lightAt(small, x, y);
      if (size < leastGradient) continue;
      // A glint must not outvote the rest of a rim.
      edges.push({ x, y, ux: gx / size, uy: gy / size, weight: Math.min(1, size / (4 * leastGradient)) });
    }
  }
  return edges;
}

function cast(edges: Edge[], { width, height }: SmallLight, radius: number): Float32Array {
  const votes = new Float32Array(width * height);
  const reach = Math.ceil(spread * radius);
  const vote = (cx: number, cy: number, weight: number): void => {
    if (cx >= 0 && cy >= 0 && cx < width && cy < height) votes[cy * width + cx] += weight;
  };
  for (const { x, y, ux, uy, weight } of edges) {
    for (let d = -reach; d <= reach; d++) {
      const [dx, dy] = [(radius + d) * ux, (radius + d) * uy];
      vote(Math.round(x + dx), Math.round(y + dy), weight);
      vote(Math.round(x - dx), Math.round(y - dy), weight);
    }
  }
  return votes;
}

/** Places that more of a circle voted for than for any within half a radius. */
function peaks(votes: Float32Array, { width, height }: SmallLight, radius: number) {
  const least = leastVoted * 2 * Math.PI * radius;
  const sums = new Float32Array(votes.length);
  for (let y = 1; y < height - 1; y++) {
    for (let i = y * width + 1; i < (y + 1) * width - 1; i++) {
      if (votes[i] < least / 9) continue;
      for (let n = i - width; n <= i + width; n += width) sums[i] += votes[n - 1] + votes[n] + votes[n + 1];
    }
  }
  const all: { x: number; y: number; share: number }[] = [];
  for (let i = width; i < sums.length - width; i++) {
    if (sums[i] < least || sums[i] < Math.max(sums[i - 1], sums[i + 1], sums[i - width], sums[i + width]))
      continue;
    all.push({ x: i % width, y: Math.floor(i / width), share: sums[i] / (2 * Math.PI * radius) });
  }
  const kept: typeof all = [];
  for (const p of all.sort((a, b) => b.share - a.share)) {
    if (kept.length === 30) break;
    if (kept.every((k) => (k.x - p.x) ** 2 + (k.y - p.y) ** 2 > (radius / 2) ** 2)) kept.push(p);
  }
  return kept;
}

/** Share of the pixels of a disc that lie on an edge. */
function edgesWithin(small: SmallLight, cx: number, cy: number, radius: number): number {
  let on = 0;
  let all = 0;
  for (let y = Math.ceil(cy - radius); y <= cy + radius; y++) {
    for (let x = Math.ceil(cx - radius); x <= cx + radius; x++) {
      if (x < 1 || y < 1 || x >= small.width - 1 || y >= small.height - 1) continue;
      if ((x - cx) ** 2 + (y - cy) ** 2 > radius ** 2) continue;
      all++;
      if (lightAt(small, x, y).size > 2 * leastGradient) on++;
    }
  }
  return all === 0 ? 1 : on / all;
}
