import type { Point } from '../geometry/index.ts';

/**
 * Leaves out points that lie within `tolerance` of the line through those kept.
 * @source D. Douglas, T. Peucker, "Algorithms for the reduction of the number of points ...", Cartographica 10(2) 1973.
 */
export function simplifyPath(path: readonly Point[], tolerance: number): Point[] {
  const keep = new Uint8Array(path.length);
  keep[0] = keep[path.length - 1] = 1;
  const open: [number, number][] = [[0, path.length - 1]];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    const [far, distance] = farthest(path, from, to);
    if (distance <= tolerance * tolerance) continue;
    keep[far] = 1;
    open.push([from, far], [far, to]);
  }
  return path.filter((_, k) => keep[k]);
}

/** The same for a closed ring, split at its first point and at the point farthest from it. */
export function simplifyRing(ring: readonly Point[], tolerance: number): Point[] {
  if (ring.length < 5) return [...ring];
  let far = 0;
  let most = -1;
  ring.forEach(([x, y], k) => {
    const d = (x - ring[0][0]) ** 2 + (y - ring[0][1]) ** 2;
    if (d > most) [far, most] = [k, d];
  });
  const there = simplifyPath(ring.slice(0, far + 1), tolerance);
  const back = simplifyPath([...ring.slice(far), ring[0]], tolerance);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function farthest(path: readonly Point[], from: number, to: number): [at: number, squared: number] {
  const [ax, ay] = path[from];
  const [dx, dy] = [path[to][0] - ax, path[to][1] - ay];
  const length = dx * dx + dy * dy;
  let at = from;
  let most = 0;
  for (let k = from + 1; k < to; k++) {
    const [px, py] = [path[k][0] - ax, path[k][1] - ay];
    const t = length ? Math.max(0, Math.min(1, (px * dx + py * dy) / length)) : 0;
    const d = (px - t * dx) ** 2 + (py - t * dy) ** 2;
    if (d > most) [at, most] = [k, d];
  }
  return [at, most];
}
