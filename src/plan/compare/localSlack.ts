import type { Difference } from './differences.ts';
import type { Registered } from './register.ts';

const MOST_SHIFT_PX = 4;
const MARGIN_PX = 24;
const DEEPEST_PX = 6;
const MUST_GAIN = 0.9;

/**
 * Share of a shallow difference that goes away when the plan round it is moved a few pixels as a whole: a strip that
 * lies a little beside its plan, not a fault of its edge. 0 where no move makes the surroundings fit clearly better.
 */
export function explainedByShift(pair: Registered, difference: Difference): number {
  if (deepest(pair, difference) > DEEPEST_PX) return 0;
  const { box, pixels } = difference;
  const { width, height, built, plan } = pair;
  const k = MOST_SHIFT_PX;
  const x0 = Math.max(k, box.x0 - MARGIN_PX);
  const y0 = Math.max(k, box.y0 - MARGIN_PX);
  const x1 = Math.min(width - k, box.x1 + MARGIN_PX);
  const y1 = Math.min(height - k, box.y1 + MARGIN_PX);
  let bestMove = 0;
  let best = Infinity;
  let unmoved = 0;
  for (let dy = -k; dy <= k; dy++) {
    for (let dx = -k; dx <= k; dx++) {
      const move = dy * width + dx;
      let misfit = 0.02 * (dx * dx + dy * dy);
      for (let y = y0; y < y1; y++) {
        for (let i = y * width + x0; i < y * width + x1; i++) misfit += built[i] ^ plan[i + move];
      }
      if (move === 0) unmoved = misfit;
      if (misfit < best) [best, bestMove] = [misfit, move];
    }
  }
  if (best > unmoved * MUST_GAIN) return 0;
  const gone = pixels.filter((i) => plan[i + bestMove] === built[i]).length;
  return gone / pixels.length;
}

function deepest(pair: Registered, { sign, pixels }: Difference): number {
  let most = 0;
  for (const i of pixels) {
    const d =
      sign === 'extra' ? pair.planDistance[i] : Math.max(pair.builtDistance[i], -pair.planDistance[i]);
    if (d > most) most = d;
  }
  return most;
}
