import type { Frame, PixelBox } from './frame.ts';
import { thin } from './thin.ts';

/** A node of a skeleton: an end (one branch) or a junction. Place in pixels of the full picture. */
export interface SkeletonNode {
  x: number;
  y: number;
}

/** A run of skeleton between two nodes, its points in pixels of the full picture, both nodes' places included. */
export interface SkeletonEdge {
  from: number;
  to: number;
  points: { x: number; y: number }[];
}

export interface Skeleton {
  nodes: SkeletonNode[];
  edges: SkeletonEdge[];
}

/** The skeleton of one piece, thinned at 1/shrink of the picture's scale. */
export function skeletonOf(
  labels: Int32Array,
  id: number,
  box: PixelBox,
  frame: Frame,
  shrink: number,
): Skeleton {
  const w = Math.ceil((box.i1 - box.i0 + 1) / shrink) + 2;
  const h = Math.ceil((box.j1 - box.j0 + 1) / shrink) + 2;
  const coarse = new Uint8Array(w * h);
  for (let j = box.j0; j <= box.j1; j++) {
    const row = (Math.floor((j - box.j0) / shrink) + 1) * w + 1;
    for (let i = box.i0, k = j * frame.width + i; i <= box.i1; i++, k++) {
      if (labels[k] === id) coarse[(row + (i - box.i0) / shrink) | 0] = 1;
    }
  }
  const place = (k: number): { x: number; y: number } => ({
    x: box.i0 + ((k % w) - 0.5) * shrink,
    y: box.j0 + (Math.floor(k / w) - 0.5) * shrink,
  });
  return graphOf(thin(coarse, w, h), w, place);
}

/** Neighbours of a skeleton pixel; a diagonal one that a side neighbour already leads to is left out. */
function neighboursOf(image: Uint8Array, k: number, w: number): number[] {
  const near: number[] = [];
  for (const step of [-w, 1, w, -1]) if (image[k + step]) near.push(k + step);
  for (const [a, b] of [
    [-w, 1],
    [w, 1],
    [w, -1],
    [-w, -1],
  ]) {
    if (image[k + a + b] && !image[k + a] && !image[k + b]) near.push(k + a + b);
  }
  return near;
}

function graphOf(image: Uint8Array, w: number, place: (k: number) => { x: number; y: number }): Skeleton {
  const pixels: number[] = [];
  for (let k = 0; k < image.length; k++) if (image[k]) pixels.push(k);
  const near = new Map(pixels.map((k) => [k, neighboursOf(image, k, w)]));
  const nodeOf = new Map<number, number>();
  const nodes: SkeletonNode[] = [];
  const gather = (start: number): void => {
    const cluster = [start];
    nodeOf.set(start, nodes.length);
    for (const k of cluster) {
      for (const n of near.get(k)!) {
        if (nodeOf.has(n) || near.get(n)!.length < 3) continue;
        nodeOf.set(n, nodes.length);
        cluster.push(n);
      }
    }
    const places = cluster.map(place);
    nodes.push({
      x: places.reduce((sum, p) => sum + p.x, 0) / places.length,
      y: places.reduce((sum, p) => sum + p.y, 0) / places.length,
    });
  };
  for (const k of pixels) if (near.get(k)!.length > 2 && !nodeOf.has(k)) gather(k);
  for (const k of pixels) {
    if (near.get(k)!.length > 1 || nodeOf.has(k)) continue;
    nodeOf.set(k, nodes.length);
    nodes.push(place(k));
  }
  const edges: SkeletonEdge[] = [];
  const walked = new Set<number>();
  const walk = (start: number, first: number): void => {
    const run = [first];
    let previous = start;
    let here = first;
    while (!nodeOf.has(here)) {
      walked.add(here);
      const next = near.get(here)!.find((n) => n !== previous);
      if (next === undefined) break;
      [previous, here] = [here, next];
      run.push(here);
    }
    const from = nodeOf.get(start)!;
    const to = nodeOf.get(here)!;
    edges.push({ from, to, points: [nodes[from], ...run.slice(0, -1).map(place), nodes[to]] });
  };
  for (const [k, node] of nodeOf) {
    for (const n of near.get(k)!) {
      const other = nodeOf.get(n);
      if (other === undefined ? !walked.has(n) : other !== node && k < n) walk(k, n);
    }
  }
  for (const k of pixels) {
    if (nodeOf.has(k) || walked.has(k)) continue;
    nodeOf.set(k, nodes.length);
    nodes.push(place(k));
    walk(k, near.get(k)![0]);
  }
  return { nodes, edges };
}
