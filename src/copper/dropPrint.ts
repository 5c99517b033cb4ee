import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { components, membersOf } from './components.ts';
import type { CopperMask } from './types.ts';

/** A line of print: letters no taller than this, run together no longer than this, and strokes so broad at most, mm. */
const line = { tallMm: 3, longMm: 45, broadMm: 2.2 };
/** Paper is looked for so far round it, mm. */
const roundMm = 1;
/** Red over blue as a share of all light, against the paper's: ink and its blur lie this near to it, copper rarely does. */
const alike = 0.06;
/** On paper that is itself as warm as this copper is as grey as ink beside it, and nothing is told. */
const warmPaper = 0.08;
/** Ink is no brighter than the paper, copper's mirrors are. */
const brightest = 1.03;
/** Of print at least this share is of the paper's hue and darker; of tape under half is. */
const share = 0.75;

/**
 * The mask without lines of print: names and tags stand on a printed plan where tape is laid, and letters run into one
 * another look like a narrow strip. Strips of printed plans: 0.86 and more of each line's pixels are grey, 0.41 at most of
 * each strip's (25 generated photographs, shipped nets).
 * @param taught places that the maker says are tape, mm: those stay
 */
export function dropPrint(mask: CopperMask, sheet: SquaredSheet, taught: readonly Point[] = []): CopperMask {
  const { width, height, pxPerMm, originMm } = mask;
  const regions = components(mask.filled, width, height, 8);
  const kept = new Set(
    taught.map(([x, y]) => {
      const [i, j] = [Math.floor((x - originMm[0]) * pxPerMm), Math.floor((y - originMm[1]) * pxPerMm)];
      return regions.labels[j * width + i];
    }),
  );
  const print = membersOf(regions).filter(
    (pixels, label) => pixels.length > 0 && !kept.has(label) && isPrint(pixels, mask, sheet),
  );
  if (print.length === 0) return mask;
  const without = { ...mask, filled: mask.filled.slice(), strict: mask.strict.slice() };
  for (const pixels of print)
    for (const k of pixels) {
      without.filled[k] = 0;
      without.strict[k] = 0;
    }
  return without;
}

function isPrint(pixels: Int32Array, mask: CopperMask, sheet: SquaredSheet): boolean {
  const { width, pxPerMm } = mask;
  if (pixels.length > line.longMm * line.broadMm * pxPerMm ** 2) return false;
  const box = boxOf(pixels, width);
  const [wide, high] = [box.x1 - box.x0 + 1, box.y1 - box.y0 + 1];
  const [long, tall] = [Math.max(wide, high), Math.min(wide, high)];
  if (tall > line.tallMm * pxPerMm || long > line.longMm * pxPerMm) return false;
  if (pixels.length / long > line.broadMm * pxPerMm) return false;
  const paper = paperAround(box, mask, sheet);
  if (!paper || paper.hue > warmPaper) return false;
  let grey = 0;
  for (const k of pixels) {
    const { hue, light } = colourAt(sheet.rgb, k);
    if (Math.abs(hue - paper.hue) < alike && light < brightest * paper.light) grey++;
  }
  return grey > share * pixels.length;
}

interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

function boxOf(pixels: Int32Array, width: number): Box {
  const box = { x0: width, y0: Infinity, x1: 0, y1: 0 };
  for (const k of pixels) {
    const [x, y] = [k % width, Math.floor(k / width)];
    if (x < box.x0) box.x0 = x;
    if (x > box.x1) box.x1 = x;
    if (y < box.y0) box.y0 = y;
    if (y > box.y1) box.y1 = y;
  }
  return box;
}

interface Colour {
  /** Red over blue as a share of all light. */
  hue: number;
  /** Sum of the three codes. */
  light: number;
}

function colourAt(rgb: Uint8Array, k: number): Colour {
  const [r, g, b] = [rgb[3 * k], rgb[3 * k + 1], rgb[3 * k + 2]];
  return { hue: (r - b) / (r + g + b + 1), light: r + g + b };
}

/** Mean colour of what is no copper round a box; undefined where there is too little of it. */
function paperAround(box: Box, mask: CopperMask, { rgb }: SquaredSheet): Colour | undefined {
  const { width, height, pxPerMm, filled } = mask;
  const far = Math.round(roundMm * pxPerMm);
  let [r, g, b, count] = [0, 0, 0, 0];
  for (let y = Math.max(0, box.y0 - far); y <= Math.min(height - 1, box.y1 + far); y++)
    for (let x = Math.max(0, box.x0 - far); x <= Math.min(width - 1, box.x1 + far); x++) {
      const k = y * width + x;
      if (filled[k]) continue;
      r += rgb[3 * k];
      g += rgb[3 * k + 1];
      b += rgb[3 * k + 2];
      count++;
    }
  if (count < far * far) return undefined;
  return { hue: (r - b) / (r + g + b), light: (r + g + b) / count };
}
