import type { Quad } from '../../geometry/index.ts';
import type { Candidate } from './quads.ts';
import type { BaseMap } from '../learned/index.ts';
import { applyHomography, homographyFromUnitSquare } from '../homography.ts';
import { findEdges, scaled } from './edges.ts';
import type { Edges } from './edges.ts';
import { findLines } from './lines.ts';
import type { Line } from './lines.ts';
import { three } from './three.ts';
import type { WorkPicture } from './work.ts';

/** The straight borders of a base map, in work px, and its edges with the work px they are known to. */
export function mapLines(map: BaseMap, work: WorkPicture): { lines: Line[]; edges: Edges; grain: number } {
  const none = new Float32Array(map.width * map.height);
  const plane = map.prob.map((p) => 255 * p);
  const found = findEdges({ width: map.width, height: map.height, step: 1, planes: [plane, none, none] });
  const times = work.width / map.width;
  const grain = Math.max(1, Math.round(times));
  const edges = scaled(found, times);
  return { lines: findLines(edges, work.width, work.height, 14, grain), edges, grain };
}

/** How well a quadrilateral agrees with a base map: mean belief within it less mean belief just outside, -1..1. */
export function mapAgreement(map: BaseMap, { corners }: Candidate, work: WorkPicture): number {
  const m = homographyFromUnitSquare(corners);
  let within = 0;
  let inner = 0;
  let around = 0;
  let outer = 0;
  for (let v = -0.15; v < 1.15; v += 0.05) {
    for (let u = -0.15; u < 1.15; u += 0.05) {
      const p = applyHomography(m, [u, v]);
      const x = Math.floor((p[0] / work.width) * map.width);
      const y = Math.floor((p[1] / work.height) * map.height);
      if (x < 0 || y < 0 || x >= map.width || y >= map.height) continue;
      const belief = map.prob[y * map.width + x];
      if (u > 0 && v > 0 && u < 1 && v < 1) {
        within += belief;
        inner++;
      } else {
        around += belief;
        outer++;
      }
    }
  }
  return within / Math.max(1, inner) - around / Math.max(1, outer);
}

/** How far into and out of a side its border is looked at, in parts of the figure. */
const depths = [0.015, 0.035, 0.055];
const alongSide = 12;

/**
 * How clearly a base map ends at each side of a quadrilateral: mean belief just within less just outside, -1..1. A figure
 * that takes in a strip of the table, or leaves out one of the base, agrees on the whole yet not at that side.
 * @param corners work px
 * @returns least, second least and mean over the sides
 */
export function mapBorder(map: BaseMap, corners: Quad, work: WorkPicture): [number, number, number] {
  const m = homographyFromUnitSquare(corners);
  const belief = (u: number, v: number): number => {
    const p = applyHomography(m, [u, v]);
    const x = Math.floor((p[0] / work.width) * map.width);
    const y = Math.floor((p[1] / work.height) * map.height);
    return x < 0 || y < 0 || x >= map.width || y >= map.height ? 0 : map.prob[y * map.width + x];
  };
  const sides = [0, 0, 0, 0];
  for (const depth of depths) {
    for (let k = 0; k < alongSide; k++) {
      const t = 0.05 + (0.9 * (k + 0.5)) / alongSide;
      sides[0] += belief(t, depth) - belief(t, -depth);
      sides[1] += belief(1 - depth, t) - belief(1 + depth, t);
      sides[2] += belief(t, 1 - depth) - belief(t, 1 + depth);
      sides[3] += belief(depth, t) - belief(-depth, t);
    }
  }
  return three(sides.map((sum) => sum / (depths.length * alongSide)));
}
