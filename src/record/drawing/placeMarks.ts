import type { Finding } from '../../net/index.ts';
import type { Box, Point } from '../../geometry/index.ts';

/** A numbered proof mark: where it points and where its number stands in the margin, mm. */
export interface Mark {
  number: number;
  finding: Finding;
  at: Point;
  /** Absent where the margin is full: then the number stands at the place itself. */
  label?: Point;
  radius: number;
}

export const marginMm = 13;
const largestRadius = 3.1;
const leastSpacing = 2 * largestRadius + 1.2;
/** More leaders than this on one side can no longer be followed by eye. */
const mostOnSide = 26;

/**
 * Gives every finding a place in the nearer margin beside the sheet, in the order of the findings from top to
 * bottom, so that leaders of one side do not cross.
 * @param sheet the sheet's box, mm
 */
export function placeMarks(findings: readonly Finding[], sheet: Box): Mark[] {
  const middle = (sheet.x0 + sheet.x1) / 2;
  const numbered = findings.map((finding, i) => ({ number: i + 1, finding }));
  const left = numbered.filter(({ finding }) => finding.at[0] < middle);
  const right = numbered.filter(({ finding }) => finding.at[0] >= middle);
  const marks = [
    ...placeSide(left, sheet.x0 - marginMm / 2, sheet),
    ...placeSide(right, sheet.x1 + marginMm / 2, sheet),
  ];
  return marks.sort((a, b) => a.number - b.number);
}

interface Numbered {
  number: number;
  finding: Finding;
}

const weights: Finding['weight'][] = ['holds', 'check', 'note'];

function placeSide(side: Numbered[], x: number, sheet: Box): Mark[] {
  const byWeight = [...side].sort(
    (a, b) => weights.indexOf(a.finding.weight) - weights.indexOf(b.finding.weight) || a.number - b.number,
  );
  const crowded = byWeight
    .slice(mostOnSide)
    .map(({ number, finding }): Mark => ({ number, finding, at: finding.at, radius: 1.6 }));
  return [...inMargin(byWeight.slice(0, mostOnSide), x, sheet), ...crowded];
}

function inMargin(side: Numbered[], x: number, sheet: Box): Mark[] {
  const byHeight = [...side].sort((a, b) => a.finding.at[1] - b.finding.at[1]);
  const spacing = Math.min(leastSpacing, (sheet.y1 - sheet.y0) / Math.max(1, byHeight.length));
  const radius = Math.min(largestRadius, spacing * 0.42);
  const heights = spread(
    byHeight.map(({ finding }) => finding.at[1]),
    spacing,
    sheet.y0 + spacing / 2,
    sheet.y1 - spacing / 2,
  );
  return byHeight.map(({ number, finding }, i) => ({
    number,
    finding,
    at: finding.at,
    label: [x, heights[i] ?? finding.at[1]],
    radius,
  }));
}

/** Moves sorted values apart to at least `spacing`, as near to their wish as a sweep down and one up gives, within low..high. */
function spread(wished: number[], spacing: number, low: number, high: number): number[] {
  const placed: number[] = [];
  for (const wish of wished) placed.push(Math.max(wish, (placed.at(-1) ?? low - spacing) + spacing, low));
  let ceiling = high;
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i] = Math.min(placed[i] as number, ceiling);
    ceiling = (placed[i] as number) - spacing;
  }
  return placed;
}
