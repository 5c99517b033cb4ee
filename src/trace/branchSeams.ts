import type { Crossing, Piece } from './types.ts';

/** mm: branches whose ends lie this near each other meet at one place. */
const near = 0.3;

/**
 * Where three or more branches meet, one tape lies over another: a single tape has no side arm. Whether such an overlap
 * conducts no picture tells.
 */
export function branchSeams({ id, lines, widthMm }: Piece): Crossing[] {
  const tips = lines
    .filter(({ widths }) => widths[widths.length >> 1] > 0.5 * widthMm)
    .flatMap(({ path }) => [path[0], path[path.length - 1]]);
  const found: Crossing[] = [];
  for (const [x, y] of tips) {
    const meeting = tips.filter(([u, v]) => Math.hypot(u - x, v - y) < near).length;
    const known = found.some(({ at }) => Math.hypot(at[0] - x, at[1] - y) < near);
    if (meeting < 3 || known) continue;
    found.push({ at: [x, y], piece: id, widthMm, gap: 0, seam: 0.7, glare: 0 });
  }
  return found;
}
