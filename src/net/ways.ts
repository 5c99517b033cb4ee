import type { Point } from '../geometry/index.ts';
import { disjointSets } from './unionFind.ts';

/** A stretch of copper, or a join that no mask shows, as an edge that can be opened in thought. */
export interface Way {
  from: number;
  to: number;
  /** 0 for a join. */
  piece: number;
  widthMm: number;
  narrowest: Point;
  middle: Point;
  /** Runs from the side of one strip to the side of another. */
  across: boolean;
  /** Why it conducts where no copper shows. */
  join?: string;
  open: boolean;
}

/** Component of each node by the ways that are not open. */
export function liveComponents(ways: readonly Way[]): (node: number) => number {
  const nodes = ways.reduce((most, { from, to }) => Math.max(most, from, to), 0) + 1;
  const sets = disjointSets(nodes);
  for (const { from, to, open } of ways) if (!open) sets.join(from, to);
  return (node) => (node < nodes ? sets.find(node) : node);
}

/**
 * The narrowest way on the widest route between two nodes (maximum-capacity path, Pollack 1960: ways are joined from the
 * widest down until the two meet).
 */
export function bottleneck(ways: readonly Way[], a: number, b: number): Way | undefined {
  const nodes = ways.reduce((most, { from, to }) => Math.max(most, from, to), 0) + 1;
  const sets = disjointSets(nodes);
  const width = ({ widthMm, across }: Way) => widthMm * (across ? 0.6 : 1);
  for (const way of [...ways].sort((p, q) => width(q) - width(p))) {
    sets.join(way.from, way.to);
    if (sets.find(a) === sets.find(b)) return way;
  }
  return undefined;
}
