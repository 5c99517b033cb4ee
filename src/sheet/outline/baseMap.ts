import type { Candidate } from './quads.ts';
import type { BaseMap } from '../learned/index.ts';
import { applyHomography, homographyFromUnitSquare } from '../homography.ts';
import { findEdges, scaled } from './edges.ts';
import type { Edges } from './edges.ts';
import { findLines } from './lines.ts';
import type { Line } from './lines.ts';
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
