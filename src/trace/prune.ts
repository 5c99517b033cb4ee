import type { Skeleton, SkeletonEdge } from './skeleton.ts';

/**
 * Takes off the spurs that a ragged border and square corners grow, shortest first, and joins the runs that remain at a
 * node of two.
 * @param radiusAt half the width of the copper at a place, px; a spur shorter than 1.5 of it lies within the strip itself
 */
export function prune(skeleton: Skeleton, radiusAt: (x: number, y: number) => number): Skeleton {
  const { nodes } = skeleton;
  let edges = [...skeleton.edges];
  const radii = new Map<number, number>();
  const radiusOf = (node: number): number => {
    const known = radii.get(node);
    if (known !== undefined) return known;
    const radius = radiusAt(nodes[node].x, nodes[node].y);
    radii.set(node, radius);
    return radius;
  };
  for (;;) {
    const degree = degrees(edges, nodes.length);
    const spurs = edges.filter((edge) => {
      const stem = degree[edge.from] === 1 ? edge.to : edge.from;
      if (degree[edge.from] !== 1 && degree[edge.to] !== 1) return false;
      return degree[stem] > 2 && lengthOf(edge) < 1.5 * radiusOf(stem);
    });
    if (!spurs.length) return { nodes, edges };
    const shortest = spurs.reduce((a, b) => (lengthOf(a) <= lengthOf(b) ? a : b));
    const stem = degree[shortest.from] === 1 ? shortest.to : shortest.from;
    edges = edges.filter((edge) => edge !== shortest);
    edges = mergeAt(edges, stem);
  }
}

export const lengthOf = ({ points }: SkeletonEdge): number =>
  points.reduce((sum, p, k) => (k ? sum + Math.hypot(p.x - points[k - 1].x, p.y - points[k - 1].y) : 0), 0);

export function degrees(edges: readonly SkeletonEdge[], count: number): Int32Array {
  const degree = new Int32Array(count);
  for (const { from, to } of edges) {
    degree[from]++;
    degree[to]++;
  }
  return degree;
}

/** Where just two runs meet at a node they become one. */
function mergeAt(edges: SkeletonEdge[], node: number): SkeletonEdge[] {
  const here = edges.filter(({ from, to }) => from === node || to === node);
  if (here.length !== 2 || here.some(({ from, to }) => from === to)) return edges;
  const [first, second] = here;
  const before = first.to === node ? first : reverse(first);
  const after = second.from === node ? second : reverse(second);
  const joined = { from: before.from, to: after.to, points: [...before.points, ...after.points.slice(1)] };
  return [...edges.filter((edge) => edge !== first && edge !== second), joined];
}

const reverse = ({ from, to, points }: SkeletonEdge): SkeletonEdge => ({
  from: to,
  to: from,
  points: [...points].reverse(),
});
