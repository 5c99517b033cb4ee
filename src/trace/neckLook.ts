import { labAt, type CopperMask, type Lab } from '../copper/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { toPx } from './frame.ts';
import { median } from './polyline.ts';
import type { Neck } from './types.ts';

/** A colour farther than this from the paper round it is no paper: L* by its own spread, a* and b*. */
const alikeL = 7;
const alikeChroma = 5;
/** Paper is looked for so far from the neck, mm, in steps of so many pixels. */
const roundMm = 6;
const step = 2;

/** So many places must lack copper to be told by. */
const least = 3;

/**
 * What the photograph says of a narrow place: a nick shows paper where copper lacks and sure copper in what is left; a
 * stain that the mask leaves out shows neither.
 */
export function lookAtNeck(neck: Neck, mask: CopperMask, sheet: SquaredSheet): Neck {
  const { width, height, pxPerMm, filled, likelihood } = mask;
  const [x, y] = toPx(mask, neck.at);
  const near = (neck.usualMm / 2) * pxPerMm;
  const far = roundMm * pxPerMm;
  const paper: Lab[] = [];
  const lacking: Lab[] = [];
  const left: number[] = [];
  for (let j = Math.max(0, Math.ceil(y - far)); j < Math.min(height, y + far); j += step) {
    for (let i = Math.max(0, Math.ceil(x - far)); i < Math.min(width, x + far); i += step) {
      const k = j * width + i;
      const away = Math.sqrt((i - x) ** 2 + (j - y) ** 2);
      if (filled[k]) {
        if (away < 0.6 * near) left.push(likelihood[k]);
        continue;
      }
      const lab = labAt(sheet, k);
      if (away >= near) paper.push(lab);
      else if (betweenCopper(mask, i, j, near)) lacking.push(lab);
    }
  }
  if (left.length < 2 || lacking.length < least || paper.length < 10) return neck;
  const usual = [0, 1, 2].map((c) => median(paper.map((lab) => lab[c])));
  const spread = median(paper.map((lab) => Math.abs(lab[0] - usual[0])));
  const alike = lacking.filter(
    ([L, a, b]) =>
      Math.abs(L - usual[0]) < Math.max(alikeL, 3 * spread) &&
      Math.hypot(a - usual[1], b - usual[2]) < alikeChroma,
  );
  return { ...neck, sure: median(left) / 255, paper: alike.length / lacking.length };
}

const ways = [
  [1, 0],
  [0, 1],
  [0.7, 0.7],
  [0.7, -0.7],
];

/** Whether copper lies on two opposite sides within so many pixels: a place in a nick, not beside the strip. */
function betweenCopper({ filled, width, height }: CopperMask, i: number, j: number, reach: number): boolean {
  const meets = (dx: number, dy: number): boolean => {
    for (let t = 1; t <= reach; t++) {
      const [x, y] = [Math.round(i + t * dx), Math.round(j + t * dy)];
      if (x < 0 || y < 0 || x >= width || y >= height) return false;
      if (filled[y * width + x]) return true;
    }
    return false;
  };
  return ways.some(([dx, dy]) => meets(dx, dy) && meets(-dx, -dy));
}
