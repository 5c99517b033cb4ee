import { holds, type Finding } from '../../net/index.ts';
import type { Point } from '../../geometry/index.ts';
import { toScreen, type View } from '../surface/view.ts';

/** A proof mark on the screen: where it points, where its number stands, px. */
export interface LaidMark {
  number: number;
  finding: Finding;
  at: Point;
  /** Absent where the margin is full: then the number stands at the place itself. */
  label?: Point;
}

/** Where numbers may stand, px: the x of both margins, and down to where. */
export interface Margins {
  left: number;
  right: number;
  bottom: number;
}

export const markRadius = 12;
const apart = 2 * markRadius + 3;

/**
 * Numbers stand in the nearer margin, ordered as their places are, so that leaders of one side do not cross. Where a
 * margin is full, what weighs least stays at its place.
 */
export function layMarks(findings: readonly Finding[], view: View, margins: Margins): LaidMark[] {
  const placed = findings.map((finding, i) => ({ number: i + 1, finding, at: toScreen(view, finding.at) }));
  const middle = (margins.left + margins.right) / 2;
  const left = placed.filter(({ at }) => at[0] < middle);
  const right = placed.filter(({ at }) => at[0] >= middle);
  return [...side(left, margins.left, margins.bottom), ...side(right, margins.right, margins.bottom)];
}

function side(marks: LaidMark[], x: number, bottom: number): LaidMark[] {
  const room = Math.max(1, Math.floor(bottom / apart));
  const byWeight = [...marks].sort((a, b) => rank(a.finding) - rank(b.finding) || a.number - b.number);
  return [...stacked(byWeight.slice(0, room), x, bottom), ...byWeight.slice(room)];
}

function rank(finding: Finding): number {
  if (finding.checked || finding.weight === 'note') return 2;
  return holds(finding) ? 0 : 1;
}

function stacked(marks: LaidMark[], x: number, bottom: number): LaidMark[] {
  const byHeight = [...marks].sort((a, b) => a.at[1] - b.at[1]);
  const heights: number[] = [];
  for (const { at } of byHeight) heights.push(Math.max(at[1], (heights.at(-1) ?? apart / 2 - apart) + apart));
  let most = bottom - apart / 2;
  for (let i = heights.length - 1; i >= 0; i--) {
    heights[i] = Math.min(heights[i], most);
    most = heights[i] - apart;
  }
  return byHeight.map((mark, i) => ({ ...mark, label: [x, heights[i]] as const }));
}
