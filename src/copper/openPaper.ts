import type { SquaredSheet } from '../sheet/index.ts';
import { components, membersOf } from './components.ts';
import { labAt, paperRound } from './paperRound.ts';
import type { CopperMask } from './types.ts';

/** What differs from the paper round it by no more than this in L* (or so many of its spreads), a* and b* looks like it. */
const alikeL = 5;
const spreads = 2.5;
const alikeChroma = 5;
/** Share of a bridge that must look like paper. */
const mostly = 0.5;
/** Over this L* the picture is nearly burnt out: paper and glint look alike there. */
const burnt = 95;

/**
 * Opens bridges that were laid over a supposed glare between two separate pieces where nothing but paper shows: a glare
 * looks like the lamp, not like the paper beside it. Nor is a bridge believed in the shadow of a lamp.
 * @param lamps places on or beside a lamp
 */
export function openPaper(
  mask: CopperMask,
  sheet: SquaredSheet,
  lamps: (x: number, y: number) => boolean,
): CopperMask {
  if (mask.by !== 'learned') return mask;
  const { width, height, strict, pxPerMm, originMm } = mask;
  const shaded = (k: number): boolean =>
    lamps(originMm[0] + ((k % width) + 0.5) / pxPerMm, originMm[1] + (Math.floor(k / width) + 0.5) / pxPerMm);
  const pieces = components(strict, width, height, 4).labels;
  const bridge = new Uint8Array(strict.length);
  for (let k = 0; k < bridge.length; k++) if (mask.filled[k] && !strict[k]) bridge[k] = 1;
  const filled = mask.filled.slice();
  for (const each of membersOf(components(bridge, width, height, 8))) {
    if (!joinsTwo(each, pieces, width)) continue;
    for (const k of each.filter(shaded)) filled[k] = 0;
    for (const k of paperIn(each, mask, sheet)) filled[k] = 0;
  }
  return { ...mask, filled };
}

const none = new Int32Array(0);

function joinsTwo(bridge: Int32Array, pieces: Int32Array, width: number): boolean {
  let first = 0;
  for (const k of bridge) {
    for (const near of [k - 1, k + 1, k - width, k + width]) {
      const piece = pieces[near];
      if (!piece) continue;
      if (first && piece !== first) return true;
      first = piece;
    }
  }
  return false;
}

/** The pixels of a bridge that look like the paper round it; none where most do not. */
function paperIn(bridge: Int32Array, { filled }: CopperMask, sheet: SquaredSheet): Int32Array {
  const paper = paperRound(bridge, filled, sheet);
  if (!paper || paper.L > burnt) return none;
  const off = Math.max(alikeL, spreads * paper.spread);
  const found = bridge.filter((k) => {
    const [L, a, b] = labAt(sheet, k);
    const alike = L > paper.L - off && L < paper.rim + off;
    return alike && Math.abs(a - paper.a) < alikeChroma && Math.abs(b - paper.b) < alikeChroma;
  });
  return found.length >= mostly * bridge.length ? found : none;
}
