import type { Patch } from '../../card/index.ts';
import { components, type CopperMask } from '../../copper/index.ts';
import { insideRing, type Point } from '../../geometry/index.ts';
import { isCopper } from './acrossFold.ts';
import { apply, inverse } from './rigid.ts';
import type { Laid } from './compose.ts';

/** What lies within this of copper seen before is that copper, mm: two photographs differ so much. */
const sameMm = 0.6;
/** Less new copper is a difference of two photographs, mm^2. */
const leastMm2 = 2;
/** Tape off a patch is followed so far, mm. */
const farMm = 60;
/** A patch's own tape comes at least this near to its edge, mm. */
const nearMm = 1;

/**
 * Where tape that came with a patch runs off it onto copper that lay there before: a seam, not proven to conduct. Tape
 * that ends on paper joins nothing and is not told.
 * @param now the base's copper as it is
 * @param earlier the base before the patch
 */
export function patchSeams(now: CopperMask, { read, registration }: Laid, patch: Patch): Point[] {
  const { width, height, pxPerMm, originMm } = now;
  const toOwn = inverse(registration.toBase);
  const place = (k: number): Point => [
    originMm[0] + ((k % width) + 0.5) / pxPerMm,
    originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm,
  ];
  const before = (p: Point) => isCopper(read.seen, apply(toOwn, p));
  const fresh = new Uint8Array(width * height);
  const within = reach(patch, farMm, now);
  for (const k of within) {
    if (!now.filled[k]) continue;
    const p = place(k);
    if (wellInside(p, patch) || !nearCopper(before, p)) fresh[k] = 1;
  }
  const { labels, count } = components(fresh, width, height);
  const areas = new Int32Array(count + 1);
  for (const k of within) areas[labels[k]]++;
  const enough = within.filter((k) => labels[k] > 0 && areas[labels[k]] >= leastMm2 * pxPerMm ** 2);
  const own = new Set(enough.filter((k) => edgeNear(place(k), patch)).map((k) => labels[k]));
  const touching = within.filter((k) => {
    if (!now.filled[k] || fresh[k] || insideRing(place(k), patch.outline)) return false;
    return [k - 1, k + 1, k - width, k + width].some((n) => own.has(labels[n]));
  });
  return groups(touching.map(place));
}

/** At its very edge a patch does not tell what lies on it from what lies beside it. */
function wellInside([x, y]: Point, { outline }: Patch): boolean {
  return around(1.5 * sameMm).every(([dx, dy]) => insideRing([x + dx, y + dy], outline));
}

function around(mm: number): Point[] {
  return [
    [0, 0],
    [mm, 0],
    [-mm, 0],
    [0, mm],
    [0, -mm],
  ];
}

function nearCopper(before: (p: Point) => boolean, [x, y]: Point): boolean {
  return around(sameMm).some(([dx, dy]) => before([x + dx, y + dy]));
}

/** Pixels within a box round the patch. */
function reach({ outline }: Patch, moreMm: number, mask: CopperMask): number[] {
  const { width, height, pxPerMm, originMm } = mask;
  const px = (mm: number, axis: 0 | 1) => Math.round((mm - originMm[axis]) * pxPerMm);
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [i0, i1] = [px(Math.min(...xs) - moreMm, 0), px(Math.max(...xs) + moreMm, 0)];
  const [j0, j1] = [px(Math.min(...ys) - moreMm, 1), px(Math.max(...ys) + moreMm, 1)];
  const found: number[] = [];
  for (let j = Math.max(1, j0); j < Math.min(height - 1, j1); j++)
    for (let i = Math.max(1, i0); i < Math.min(width - 1, i1); i++) found.push(j * width + i);
  return found;
}

function edgeNear([x, y]: Point, { outline }: Patch): boolean {
  return [-nearMm, 0, nearMm].some((dx) =>
    [-nearMm, 0, nearMm].some((dy) => insideRing([x + dx, y + dy], outline)),
  );
}

/** Middles of places that lie together, 2 mm apart at most. */
function groups(places: readonly Point[]): Point[] {
  const left = [...places];
  const middles: Point[] = [];
  while (left.length > 0) {
    const group = [left.pop()!];
    for (let g = 0; g < group.length; g++) {
      for (let k = left.length - 1; k >= 0; k--) {
        if (Math.hypot(left[k][0] - group[g][0], left[k][1] - group[g][1]) > 2) continue;
        group.push(left[k]);
        left.splice(k, 1);
      }
    }
    // A brush of a few pixels is no tape lying on another.
    if (group.length < 6) continue;
    middles.push([
      group.reduce((sum, [x]) => sum + x, 0) / group.length,
      group.reduce((sum, [, y]) => sum + y, 0) / group.length,
    ]);
  }
  return middles;
}
