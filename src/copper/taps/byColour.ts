import { grabCut, grabCutHint } from '../../engine/grabCut.ts';
import type { Cv } from '../../engine/openCv.ts';
import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { components } from '../components.ts';
import type { CopperMask, LearnedMap } from '../types.ts';
import { painted } from './paint.ts';

/** mm round a tap that are what was tapped. */
const tapMm = 0.8;
/** Finest scale that the cut is made at, px/mm, and most pixels that it is made of. */
const finest = 5;
const mostPixels = 400_000;
/** Tape is no wider, mm: a region wider than this is paper, a table or a hand that the colours ran into. */
const widestMm = 9;
/** From here on the mask is too sure for a tap on paper to carry far. */
const certain = 240;
/** What is as a tapped place differs no more from it, in a channel's 0..255. */
const alikeBy = 18;
const sure = 128;

/**
 * Tape that was missed: the photograph is divided into tape and ground by its own colours, beginning from the mask and the
 * taps, and the region that a tap lies in becomes copper. All else stays as it was.
 * @param taps places in mm
 */
export function growByTaps(
  cv: Cv,
  sheet: SquaredSheet,
  mask: CopperMask,
  learned: LearnedMap,
  taps: { copper: readonly Point[]; paper: readonly Point[] },
): CopperMask {
  const small = shrunk(sheet);
  const hints = hintsOf(sheet, small, mask, learned, taps);
  const tape = grabCut(cv, small.rgb, small.width, small.height, hints, 2);
  const gained = regionsAt(tape, small, taps.copper);
  return painted(mask, pixelsUnder(small, gained), 1);
}

/** A region that is no tape: what looks like a tapped place and hangs together with it is taken out. @param taps places in mm */
export function dropAlike(sheet: SquaredSheet, mask: CopperMask, taps: readonly Point[]): CopperMask {
  const small = shrunk(sheet);
  const lost = alike(small, taps, (k) => mask.filled[k] === 1 && mask.likelihood[k] < certain);
  return painted(mask, pixelsUnder(small, lost), 0);
}

/** A shrunken sheet; `step` pixels of the sheet make one of it. */
interface Small {
  width: number;
  height: number;
  step: number;
  sheetWidth: number;
  pxPerMm: number;
  originMm: Point;
  rgb: Uint8Array;
}

function shrunk({ width, height, pxPerMm, originMm, rgb }: SquaredSheet): Small {
  const step = Math.max(1, Math.round(pxPerMm / finest), Math.ceil(Math.sqrt((width * height) / mostPixels)));
  const size = { width: Math.floor(width / step), height: Math.floor(height / step) };
  const out = new Uint8Array(3 * size.width * size.height);
  for (let j = 0, o = 0; j < size.height; j++) {
    for (let i = 0; i < size.width; i++) {
      for (let c = 0; c < 3; c++, o++) {
        let sum = 0;
        for (let y = 0; y < step; y++)
          for (let x = 0; x < step; x++) sum += rgb[3 * ((j * step + y) * width + i * step + x) + c];
        out[o] = sum / step ** 2;
      }
    }
  }
  return { ...size, step, sheetWidth: width, pxPerMm: pxPerMm / step, originMm, rgb: out };
}

/** Off the base, under lamps and cells and where paper was tapped is ground; where tape was tapped is tape. */
function hintsOf(
  sheet: SquaredSheet,
  small: Small,
  mask: CopperMask,
  learned: LearnedMap,
  taps: { copper: readonly Point[]; paper: readonly Point[] },
): Uint8Array {
  const hints = new Uint8Array(small.width * small.height);
  for (let j = 0, n = 0; j < small.height; j++) {
    const y = small.originMm[1] + (j + 0.5) / small.pxPerMm;
    for (let i = 0; i < small.width; i++, n++) {
      const x = small.originMm[0] + (i + 0.5) / small.pxPerMm;
      const k = pixelOf(small, n);
      const on = x >= 0 && y >= 0 && x <= sheet.baseMm.width && y <= sheet.baseMm.height;
      if (!on || learned.lamp[k] >= sure || learned.cell[k] >= sure) hints[n] = grabCutHint.background;
      else hints[n] = mask.filled[k] ? grabCutHint.probablyForeground : grabCutHint.probablyBackground;
    }
  }
  for (const at of discs(small, taps.paper)) hints[at] = grabCutHint.background;
  for (const at of discs(small, taps.copper)) hints[at] = grabCutHint.foreground;
  return hints;
}

/** The pixels round the taps. */
function discs(small: Small, taps: readonly Point[]): number[] {
  const reach = Math.max(1, tapMm * small.pxPerMm);
  return taps.flatMap(([x, y]) => {
    const [u, v] = [(x - small.originMm[0]) * small.pxPerMm, (y - small.originMm[1]) * small.pxPerMm];
    const found: number[] = [];
    for (let j = Math.max(0, Math.floor(v - reach)); j < Math.min(small.height, v + reach); j++) {
      for (let i = Math.max(0, Math.floor(u - reach)); i < Math.min(small.width, u + reach); i++) {
        if (Math.hypot(i + 0.5 - u, j + 0.5 - v) <= reach) found.push(j * small.width + i);
      }
    }
    return found;
  });
}

/** The regions that taps lie in, less those too wide to be tape. */
function regionsAt(mask: Uint8Array, small: Small, taps: readonly Point[]): Uint8Array {
  const { labels, count } = components(mask, small.width, small.height);
  const chosen = new Uint8Array(count + 1);
  for (const at of discs(small, taps)) chosen[labels[at]] = 1;
  chosen[0] = 0;
  const widths = widestSquares(mask, labels, count, small.width);
  return Uint8Array.from(labels, (label) =>
    chosen[label] && widths[label] <= widestMm * small.pxPerMm ? 1 : 0,
  );
}

/** The tapped discs, and of what `open` gives all that looks the same and hangs together with a tap. */
function alike(small: Small, taps: readonly Point[], open: (k: number) => boolean): Uint8Array {
  const out = new Uint8Array(small.width * small.height);
  for (const tap of taps) {
    const disc = discs(small, [tap]);
    const mean = [0, 1, 2].map((c) => disc.reduce((sum, n) => sum + small.rgb[3 * n + c], 0) / disc.length);
    const same = out.map((_, n) => {
      const near = mean.every((v, c) => Math.abs(small.rgb[3 * n + c] - v) <= alikeBy);
      return near && open(pixelOf(small, n)) ? 1 : 0;
    });
    for (const n of disc) same[n] = 1;
    const { labels } = components(same, small.width, small.height);
    const own = labels[disc[0]];
    for (let n = 0; n < out.length; n++) if (labels[n] === own) out[n] = 1;
  }
  return out;
}

/** The sheet's pixel in the middle of a small one. */
function pixelOf({ width, step, sheetWidth }: Small, n: number): number {
  const half = step >> 1;
  return (Math.floor(n / width) * step + half) * sheetWidth + (n % width) * step + half;
}

/** Side of the largest upright square within each region, px. */
function widestSquares(mask: Uint8Array, labels: Int32Array, count: number, width: number): Int32Array {
  const side = new Int32Array(mask.length);
  const widest = new Int32Array(count + 1);
  for (let k = 0; k < mask.length; k++) {
    if (!mask[k]) continue;
    const inner = k > width && k % width > 0;
    side[k] = 1 + (inner ? Math.min(side[k - 1], side[k - width], side[k - width - 1]) : 0);
    widest[labels[k]] = Math.max(widest[labels[k]], side[k]);
  }
  return widest;
}

/** The sheet's pixels that some small ones are made of. */
function pixelsUnder({ width, step, sheetWidth }: Small, chosen: Uint8Array): number[] {
  const found: number[] = [];
  for (let n = 0; n < chosen.length; n++) {
    if (!chosen[n]) continue;
    const from = Math.floor(n / width) * step * sheetWidth + (n % width) * step;
    for (let y = 0; y < step; y++) for (let x = 0; x < step; x++) found.push(from + y * sheetWidth + x);
  }
  return found;
}
