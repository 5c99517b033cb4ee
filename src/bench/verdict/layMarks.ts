import type { Finding } from '../../net/index.ts';
import type { Point } from '../../geometry/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** A proof mark on the screen: where it points, where its number stands, px. */
export interface LaidMark {
  number: number;
  finding: Finding;
  at: Point;
  label: Point;
}

export const markRadius = 12;
const apart = 2 * markRadius + 3;

/**
 * Numbers stand in the nearer margin, ordered as their places are, so that leaders of one side do not cross.
 * @param box size of the surface, px
 */
export function layMarks(
  findings: readonly Finding[],
  view: View,
  box: { left: number; right: number; bottom: number },
): LaidMark[] {
  const placed = findings.map((finding, i) => ({ number: i + 1, finding, at: toScreen(view, finding.at) }));
  const middle = (box.left + box.right) / 2;
  const left = placed.filter(({ at }) => at[0] < middle);
  const right = placed.filter(({ at }) => at[0] >= middle);
  return [...stack(left, box.left, box.bottom), ...stack(right, box.right, box.bottom)];
}

function stack(side: Omit<LaidMark, 'label'>[], x: number, bottom: number): LaidMark[] {
  const byHeight = [...side].sort((a, b) => a.at[1] - b.at[1]);
  const step = Math.min(apart, bottom / Math.max(1, byHeight.length));
  const heights: number[] = [];
  for (const { at } of byHeight) heights.push(Math.max(at[1], (heights.at(-1) ?? step / 2 - step) + step));
  let most = bottom - step / 2;
  for (let i = heights.length - 1; i >= 0; i--) {
    heights[i] = Math.min(heights[i], most);
    most = heights[i] - step;
  }
  return byHeight.map((mark, i) => ({ ...mark, label: [x, heights[i]] as const }));
}
