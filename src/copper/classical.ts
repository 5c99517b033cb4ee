import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { boxMean } from './boxMean.ts';
import { flankPaper } from './flank.ts';
import { rootPlanes } from './lab.ts';
import { paperField } from './paper.ts';
import { relativeLab } from './relative.ts';
import { scoresNear, scoreUnit, unlikePaper } from './scores.ts';
import { dropSpecks, fillHoles } from './specks.ts';
import { grow } from './grow.ts';
import { readSigns, shapeOf, type Signs } from './signs.ts';
import { stripEvidence } from './stripEvidence.ts';
import { teach } from './taught.ts';

/** px/mm at which shapes are looked at; finer shows no more of a strip 2 mm wide. */
const coarse = 2;

/** Three masks of one sheet, as in `CopperMask`, and what speaks for and against them. */
export interface Seen extends Masks {
  signs: Signs;
}

/** Masks as in `CopperMask`. */
export interface Masks {
  filled: Uint8Array;
  strict: Uint8Array;
  likelihood: Uint8Array;
}

/**
 * Copper by local paper colour and by shape, no learning: strip-shaped regions are found at a coarse scale, then each
 * pixel in and round them is held against the bare paper beside it.
 */
export function classical(sheet: SquaredSheet, onCopper: readonly Point[], onPaper: readonly Point[]): Seen {
  const { width, height, pxPerMm } = sheet;
  const shrink = Math.max(1, Math.round(pxPerMm / coarse));
  const scale = pxPerMm / shrink;
  const small = rootPlanes(sheet.rgb, width, height, shrink);
  const wide = paperField(small, Math.round(3.2 * scale), 5);
  const relative = relativeLab(small, wide, wide.cell);
  const taught = teach(relative, scale, sheet.originMm, onCopper, onPaper);
  const evidence = stripEvidence(relative, scale, taught);
  const region = Uint8Array.from(evidence, (v) => (v > 0.4 ? 1 : 0));
  const near = grow(region, small.width, small.height, scale);
  const bare = near.map((n, k) =>
    n || unlikePaper(relative.L[k] - 100, relative.a[k], relative.b[k]) > 4 ? 0 : 1,
  );
  const flank = flankPaper(small, bare, wide, Math.round(3 * scale));
  const scores = scoresNear(sheet, flank, near, shrink);
  const seen = decide(scores, sheet, {
    width: small.width,
    height: small.height,
    shrink,
    scale,
    region,
    near,
  });
  return { ...seen, signs: { ...readSigns(small, relative, evidence), ...shapeOf(seen.filled, sheet) } };
}

/** The coarse picture's regions. */
interface Coarse {
  width: number;
  height: number;
  /** Side of its pixel in pixels of the sheet, and its px/mm. */
  shrink: number;
  scale: number;
  /** 1 = strip-shaped; and that grown by a millimetre. */
  region: Uint8Array;
  near: Uint8Array;
}

/** Least score that is not paper, and the least and greatest at which a border is drawn, in units of paper's scatter. */
const notPaper = 1.3;
const lowestCut = 2.2;
const highestCut = 6;

/** Masks from the pixels' scores: strict where one is copper by itself, filled where its strip holds it too. */
function decide(scores: Uint8Array, sheet: SquaredSheet, small: Coarse): Masks {
  const { width, height, pxPerMm } = sheet;
  const cut = borderScore(scores, width, height, small);
  const core = shrinkMask(small.region, small.width, small.height, 0.8 * small.scale);
  const likelihood = new Uint8Array(width * height);
  const copper = new Uint8Array(width * height);
  const held = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    const row = Math.min(small.height - 1, Math.floor(j / small.shrink)) * small.width;
    for (let c = 0; c < small.width; c++) {
      const n = row + c;
      const border = cut[n];
      const least = core[n] ? notPaper * scoreUnit : Infinity;
      const end = j * width + (c === small.width - 1 ? width : (c + 1) * small.shrink);
      for (let k = j * width + c * small.shrink; k < end; k++) {
        if (!scores[k]) continue;
        const odds = scores[k] / border;
        likelihood[k] = Math.min(255, 128 * odds);
        copper[k] = odds >= 1 ? 1 : 0;
        held[k] = copper[k] | (scores[k] > least ? 1 : 0);
      }
    }
  }
  const least = 3 * pxPerMm ** 2;
  const strict = dropSpecks(copper, width, height, least);
  const filled = fillHoles(dropSpecks(held, width, height, least), width, height, 4 * pxPerMm ** 2);
  return { strict, likelihood, filled };
}

/**
 * Score at which the border lies at each small pixel: under half of what the strip nearby shows, so that blur and the
 * shade beside a thick tape do not widen it.
 */
function borderScore(scores: Uint8Array, width: number, height: number, small: Coarse): Float32Array {
  const { shrink, scale, region } = small;
  const sums = new Float32Array(region.length);
  const counts = new Float32Array(region.length);
  for (let n = 0; n < region.length; n++) {
    if (!region[n]) continue;
    const i0 = (n % small.width) * shrink;
    const j0 = Math.floor(n / small.width) * shrink;
    for (let j = j0; j < Math.min(height, j0 + shrink); j++) {
      for (let k = j * width + i0; k < j * width + Math.min(width, i0 + shrink); k++) {
        if (scores[k] < 3 * scoreUnit) continue;
        sums[n] += scores[k];
        counts[n]++;
      }
    }
  }
  const reach = Math.round(1.5 * scale);
  const total = boxMean(sums, small.width, small.height, reach);
  const seen = boxMean(counts, small.width, small.height, reach);
  return total.map((sum, n) => {
    const usual = seen[n] > 0 ? sum / seen[n] : 0;
    return Math.max(lowestCut * scoreUnit, Math.min(highestCut * scoreUnit, 0.45 * usual));
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
