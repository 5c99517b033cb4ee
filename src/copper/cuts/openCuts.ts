import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask, SeenCut } from '../types.ts';
import { cutsAcross, type Cut } from './cuts.ts';

/** px, at 10 px/mm, beyond a strip's border over which what still hangs on to its cut is opened too. */
const beyond = 6;
/** px, at 10 px/mm, that a strip's border may lie farther out than its chord tells. */
const uneven = 2;

/**
 * Opens fine cuts that the nets run over: a straight band right across a strip that shows the paper of its two sides.
 * @param hidden places that something lies on: what crosses a strip there is no cut
 */
export function openCuts(
  mask: CopperMask,
  sheet: SquaredSheet,
  hidden: (x: number, y: number) => boolean,
): CopperMask {
  if (mask.by !== 'learned') return mask;
  const cuts = cutsAcross(mask, sheet, hidden);
  if (cuts.length === 0) return mask;
  const opened = { ...mask, filled: mask.filled.slice(), strict: mask.strict.slice() };
  for (const cut of cuts) open(cut, mask, opened);
  return { ...opened, cuts: cuts.map((cut) => seenCut(cut, mask)) };
}

function seenCut({ place, row, before, behind, sure }: Cut, { pxPerMm, originMm }: CopperMask): SeenCut {
  const { along } = place;
  const off = ((row + (behind - before) / 2) * pxPerMm) / 10;
  return {
    at: [
      originMm[0] + (place.x + off * along[0]) / pxPerMm,
      originMm[1] + (place.y + off * along[1]) / pxPerMm,
    ],
    widthMm: (before + behind) / 10,
    along,
    stripMm: (2 * place.half) / pxPerMm,
    sure,
  };
}

function open(
  { place, row, slope, before, behind }: Cut,
  mask: CopperMask,
  { filled, strict }: CopperMask,
): void {
  const { width, height, pxPerMm } = mask;
  const unit = pxPerMm / 10;
  const { along, across } = place;
  const on = endOf(1);
  const back = endOf(-1);
  const reach = Math.ceil(
    Math.max(on, back) * Math.hypot(1, slope) + (Math.abs(row) + Math.max(before, behind) + 1) * unit,
  );
  const [ci, cj] = [Math.floor(place.x), Math.floor(place.y)];
  for (let j = Math.max(0, cj - reach); j <= Math.min(height - 1, cj + reach); j++) {
    for (let i = Math.max(0, ci - reach); i <= Math.min(width - 1, ci + reach); i++) {
      const [dx, dy] = [i + 0.5 - place.x, j + 0.5 - place.y];
      const t = dx * across[0] + dy * across[1];
      if (t > on || t < -back) continue;
      const s = (dx * along[0] + dy * along[1]) / unit - row - (slope * t) / unit;
      if (s < -before || s > behind) continue;
      filled[j * width + i] = strict[j * width + i] = 0;
    }
  }

  /** How far the cut goes on one side: to where the mask ends over its whole width, at the strip's border or a little beyond. */
  function endOf(side: 1 | -1): number {
    const last = place.half + beyond * unit;
    let t = place.half + uneven * unit;
    while (t > 0 && !isHeld(side * t)) t -= 0.5;
    while (t < last && isHeld(side * t)) t += 0.5;
    return Math.min(last, t + 1);
  }

  function isHeld(t: number): boolean {
    for (let n = -before; n <= behind; n += 0.5) {
      const s = (row + n) * unit + slope * t;
      const i = Math.floor(place.x + s * along[0] + t * across[0]);
      const j = Math.floor(place.y + s * along[1] + t * across[1]);
      if (i >= 0 && j >= 0 && i < width && j < height && mask.filled[j * width + i] === 1) return true;
    }
    return false;
  }
}
