import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { boxMean } from './boxMean.ts';
import { flankPaper } from './flank.ts';
import { rootPlanes } from './lab.ts';
import { paperField } from './paper.ts';
import { relativeLab, type RelativeLab } from './relative.ts';
import { dropSpecks, fillHoles } from './specks.ts';
import { grow } from './grow.ts';
import { stripEvidence } from './stripEvidence.ts';

/** px/mm at which shapes are looked at; finer shows no more of a strip 2 mm wide. */
const coarse = 2;

/** Three masks of one sheet, as in `CopperMask`. */
export interface Seen {
  filled: Uint8Array;
  strict: Uint8Array;
  likelihood: Uint8Array;
}

/**
 * Copper by local paper colour and by shape, no learning: strip-shaped regions are found at a coarse scale, then each
 * pixel in and round them is held against the bare paper beside it.
 */
export function classical(
  sheet: SquaredSheet,
  _teachCopper: readonly Point[],
  _teachPaper: readonly Point[],
): Seen {
  const { width, height, pxPerMm } = sheet;
  const shrink = Math.max(1, Math.round(pxPerMm / coarse));
  const scale = pxPerMm / shrink;
  const small = rootPlanes(sheet.rgb, width, height, shrink);
  const wide = paperField(small, Math.round(3.2 * scale), 5);
  const relative = relativeLab(small, wide, wide.cell);
  const evidence = stripEvidence(relative, scale);
  const region = evidence.map((v) => (v > 0.4 ? 1 : 0));
  const near = grow(Uint8Array.from(region), small.width, small.height, scale);
  const bare = near.map((n, k) => (n || unlike(relative, k) > 5 ? 0 : 1));
  const flank = flankPaper(small, bare, wide, Math.round(3 * scale));
  const fine = relativeLab(rootPlanes(sheet.rgb, width, height), flank, shrink);
  const scores = Float32Array.from(fine.L, (_, k) => unlike(fine, k));
  const cut = threshold(scores, width, height, region, small.width, shrink, scale);
  const core = shrinkMask(region, small.width, small.height, 0.8 * scale);
  const likelihood = new Uint8Array(width * height);
  const held = new Uint8Array(width * height);
  for (let j = 0, k = 0; j < height; j++) {
    const row = Math.min(small.height - 1, Math.floor(j / shrink)) * small.width;
    for (let i = 0; i < width; i++, k++) {
      const n = row + Math.min(small.width - 1, Math.floor(i / shrink));
      if (!near[n]) continue;
      likelihood[k] = Math.min(255, (128 * scores[k]) / cut[n]);
      held[k] = core[n] && scores[k] > notPaper ? 1 : 0;
    }
  }
  const least = 3 * pxPerMm ** 2;
  const strict = dropSpecks(
    likelihood.map((v) => (v >= 128 ? 1 : 0)),
    width,
    height,
    least,
  );
  const bridged = strict.map((s, k) => s | held[k]);
  const filled = dropSpecks(fillHoles(bridged, width, height, 4 * pxPerMm ** 2), width, height, least);
  return { strict, likelihood, filled };
}

/** Least score that is not paper, and the least and greatest at which a border is drawn. */
const notPaper = 1.3;
const lowestCut = 2.2;
const highestCut = 6;

/**
 * Score at which the border lies: under half of what the strip nearby shows, so that blur and the shade beside a thick
 * tape do not widen it.
 */
function threshold(
  scores: Float32Array,
  width: number,
  height: number,
  region: Uint8Array,
  smallWidth: number,
  shrink: number,
  scale: number,
): Float32Array {
  const smallHeight = region.length / smallWidth;
  const sums = new Float32Array(region.length);
  const counts = new Float32Array(region.length);
  for (let j = 0; j < Math.min(height, smallHeight * shrink); j++) {
    const row = Math.floor(j / shrink) * smallWidth;
    for (let i = 0; i < Math.min(width, smallWidth * shrink); i++) {
      const n = row + Math.floor(i / shrink);
      const score = scores[j * width + i];
      if (!region[n] || score < 3) continue;
      sums[n] += score;
      counts[n]++;
    }
  }
  const reach = Math.round(1.5 * scale);
  const total = boxMean(sums, smallWidth, smallHeight, reach);
  const seen = boxMean(counts, smallWidth, smallHeight, reach);
  return total.map((sum, n) => {
    const usual = seen[n] > 0 ? sum / seen[n] : 0;
    return Math.max(lowestCut, Math.min(highestCut, 0.45 * usual));
  });
}

/** The mask less all within `reach` px of its border. */
const shrinkMask = (mask: Uint8Array, width: number, height: number, reach: number): Uint8Array =>
  grow(
    mask.map((m) => 1 - m),
    width,
    height,
    reach,
  ).map((m) => 1 - m);

/** How far a pixel lies from paper, in units of paper's own scatter. */
const unlike = ({ L, a, b }: RelativeLab, k: number): number =>
  Math.hypot((L[k] - 100) / 7, a[k] / 3.5, b[k] / 4.5);
