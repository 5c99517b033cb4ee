import type { Patch } from '../../card/index.ts';
import { insideRing, type Point } from '../../geometry/index.ts';
import { pieceAt } from '../../parts/index.ts';
import { netAt, type Case } from '../case.ts';
import { distance, toSegment } from '../distance.ts';
import type { Finding } from '../types.ts';

/** A patch reaches so far beyond what crosses on it (common practice, no source). */
const marginMm = 2;
const stepMm = 0.25;

/** Patches that do not cover a crossing by the margin all round. */
export function scantPatches(found: Case): Finding[] {
  return found.card.patches.flatMap((patch): Finding[] => {
    const scant = scantest(found, patch);
    if (!scant || scant.mm >= marginMm) return [];
    return [
      {
        kind: 'tight',
        at: scant.at,
        sizeMm: Math.max(0, scant.mm),
        certainty: 0.85,
        weight: scant.mm < 0.5 ? 'holds' : 'check',
        lamps: [],
        nets: [],
        sheet: patch.id,
        facts: { limit: marginMm, patch: patch.id },
      },
    ];
  });
}

/**
 * The place of a crossing that lies nearest to the patch's edge. A crossing is where copper seen on top lies over a strip
 * that runs beneath and is not of its net; past the edge the margin is negative.
 */
function scantest(found: Case, patch: Patch): { mm: number; at: Point } | undefined {
  let worst: { mm: number; at: Point } | undefined;
  for (const { path, width_mm } of patch.beneath) {
    const own = netBeneath(found, path, patch);
    for (const p of bandNear(path, width_mm / 2, patch)) {
      const piece = pieceAt(found.traced, p);
      const over = piece > 0 ? netAt(found, piece, p) !== own : onTop(patch, p);
      if (!over) continue;
      const mm = (insideRing(p, patch.outline) ? 1 : -1) * toEdge(p, patch);
      if (!worst || mm < worst.mm) worst = { mm, at: p };
    }
  }
  return worst;
}

/** Net of the strip beneath, where it comes out from under the patch. */
function netBeneath(found: Case, path: readonly Point[], patch: Patch): string | undefined {
  for (const p of [path[0], path[path.length - 1]]) {
    const piece = insideRing(p, patch.outline) ? 0 : pieceAt(found.traced, p);
    if (piece > 0) return netAt(found, piece, p);
  }
  return undefined;
}

function onTop({ strips }: Patch, p: Point): boolean {
  return strips.some(({ path, width_mm }) =>
    path.some((q, k) => k > 0 && toSegment(p, path[k - 1], q) <= width_mm / 2),
  );
}

/** Places of a strip's band within a little more than the margin round the patch. */
function bandNear(path: readonly Point[], half: number, { outline }: Patch): Point[] {
  const more = marginMm + 1;
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const places: Point[] = [];
  for (let y = Math.min(...ys) - more; y <= Math.max(...ys) + more; y += stepMm) {
    for (let x = Math.min(...xs) - more; x <= Math.max(...xs) + more; x += stepMm) {
      const on = path.some((q, k) => k > 0 && toSegment([x, y], path[k - 1], q) <= half);
      if (on) places.push([x, y]);
    }
  }
  return places;
}

function toEdge(p: Point, { outline }: Patch): number {
  return Math.min(
    ...outline.map((q, k) => {
      const next = outline[(k + 1) % outline.length];
      return distance(q, next) > 0 ? toSegment(p, q, next) : distance(p, q);
    }),
  );
}
