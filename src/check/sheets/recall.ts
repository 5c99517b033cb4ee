import type { Patch } from '../../card/index.ts';
import { insideRing, type Point } from '../../geometry/index.ts';
import { trace } from '../../trace/index.ts';
import { apply } from './rigid.ts';
import type { Laid } from './compose.ts';

/** Remembered strips run on so far beyond the patch, mm: there they meet the copper that is still seen. */
const beyondMm = 4;
const stepMm = 0.4;

/** Strips that an earlier photograph of the base shows where a patch lies now, with what they run on as beside it. */
export function recall(
  { read, registration }: Laid,
  patches: readonly Patch[],
): Record<string, Patch['beneath']> {
  if (patches.length === 0) return {};
  const lines = trace(read.seen).pieces.flatMap(({ lines: own, widthMm }) =>
    own.map(({ path }) => ({ widthMm, places: finely(path.map((p) => apply(registration.toBase, p))) })),
  );
  return Object.fromEntries(
    patches.map((patch) => {
      const runs = lines.flatMap(({ places, widthMm }) =>
        runsUnder(places, patch).map((path) => ({ path, width_mm: widthMm })),
      );
      return [patch.id, runs.map((run, k) => ({ id: `${patch.id}.${k + 1}`, ...run }))];
    }),
  );
}

/** Stretches of a line that lie under a patch, each with a little more at both ends. */
function runsUnder(places: readonly Point[], { outline }: Patch): [number, number][][] {
  const more = Math.ceil(beyondMm / stepMm);
  const runs: [number, number][][] = [];
  for (let k = 0; k < places.length; k++) {
    if (!insideRing(places[k], outline)) continue;
    let end = k;
    while (end + 1 < places.length && insideRing(places[end + 1], outline)) end++;
    const stretch = places.slice(Math.max(0, k - more), end + 1 + more);
    if (stretch.length > 1) runs.push(stretch.map(([x, y]) => [round(x), round(y)]));
    k = end;
  }
  return runs;
}

function finely(path: readonly Point[]): Point[] {
  const out: Point[] = [path[0]];
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const n = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / stepMm));
    for (let i = 1; i <= n; i++) out.push([a[0] + ((b[0] - a[0]) * i) / n, a[1] + ((b[1] - a[1]) * i) / n]);
  }
  return out;
}

function round(mm: number): number {
  return Math.round(mm * 100) / 100;
}
