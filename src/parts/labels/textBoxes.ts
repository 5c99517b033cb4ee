import type { Box } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { inkBlobs } from './inkBlobs.ts';
import { greyOf, inkMask } from './ink.ts';
import type { TextBox } from './types.ts';

/** Letters on a base are between these heights, mm (common practice, no source). */
const letterMm = { least: 1.0, most: 9 };
/** A blob longer than this is a pencil line or an edge, mm. */
const longestMm = 12;
/** A line is clear where nothing but paper lies within this, mm. */
const clearMm = 1;
/** Ink nearer to copper than this is taken for the copper's own edge, mm. */
const keepOffMm = 0.2;

type Inked = Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm' | 'originMm' | 'rgb'>;

/**
 * Lines of ink that may be text, on the paper of a squared sheet.
 *
 * @param notPaper 1 where copper, lamps or the cell lie; row-major, the sheet's size
 */
export function textBoxes(sheet: Inked, notPaper: Uint8Array): TextBox[] {
  const { width, height, pxPerMm, originMm } = sheet;
  const avoid = dilate(notPaper, width, height, Math.round(keepOffMm * pxPerMm));
  const ink = inkMask(greyOf(sheet), width, height, avoid, Math.round(4 * pxPerMm));
  const letters = inkBlobs(ink, width, height).filter((box) => isLetter(box, pxPerMm));
  const words = joinLines(letters, onOneLine);
  return joinLines(words, areOneLine).map((box) => ({
    box: {
      x0: originMm[0] + box.x0 / pxPerMm,
      y0: originMm[1] + box.y0 / pxPerMm,
      x1: originMm[0] + box.x1 / pxPerMm,
      y1: originMm[1] + box.y1 / pxPerMm,
    },
    heightMm: (box.y1 - box.y0) / pxPerMm,
    clear: isClear(box, notPaper, width, height, Math.round(clearMm * pxPerMm)),
  }));
}

function isClear(
  { x0, y0, x1, y1 }: Box,
  not: Uint8Array,
  width: number,
  height: number,
  far: number,
): boolean {
  for (let y = Math.max(0, y0 - far); y < Math.min(height, y1 + far); y++)
    for (let x = Math.max(0, x0 - far); x < Math.min(width, x1 + far); x++)
      if (not[y * width + x]) return false;
  return true;
}

function isLetter(box: Box, pxPerMm: number): boolean {
  const w = (box.x1 - box.x0) / pxPerMm;
  const h = (box.y1 - box.y0) / pxPerMm;
  const size = Math.max(w, h);
  return size >= letterMm.least && h <= letterMm.most && w <= longestMm;
}

/** Joins blobs that stand side by side on one line, from the left. */
function joinLines(blobs: Box[], belong: (a: Box, b: Box) => boolean): Box[] {
  const lines = [...blobs].sort((a, b) => a.x0 - b.x0);
  for (let i = 0; i < lines.length; i++) {
    for (let j = i + 1; j < lines.length; j++) {
      if (!belong(lines[i], lines[j])) continue;
      lines[i] = union(lines[i], lines[j]);
      lines.splice(j, 1);
      j = i;
    }
  }
  return lines;
}

function onOneLine(a: Box, b: Box): boolean {
  const overlap = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0);
  const tall = Math.max(a.y1 - a.y0, b.y1 - b.y0);
  const low = Math.min(a.y1 - a.y0, b.y1 - b.y0);
  const gap = Math.max(a.x0, b.x0) - Math.min(a.x1, b.x1);
  return overlap > 0.6 * low && gap < 0.9 * tall;
}

/** A faint letter between two words, such as the cross between two sizes, must not part them. */
function areOneLine(a: Box, b: Box): boolean {
  const [tallA, tallB] = [a.y1 - a.y0, b.y1 - b.y0];
  const areWords = a.x1 - a.x0 > 1.5 * tallA && b.x1 - b.x0 > 1.5 * tallB;
  const tall = Math.max(tallA, tallB);
  const level = Math.abs(a.y1 - b.y1) < 0.25 * tall && Math.min(tallA, tallB) > 0.7 * tall;
  return areWords && level && Math.max(a.x0, b.x0) - Math.min(a.x1, b.x1) < 1.6 * tall;
}

function union(a: Box, b: Box): Box {
  return {
    x0: Math.min(a.x0, b.x0),
    y0: Math.min(a.y0, b.y0),
    x1: Math.max(a.x1, b.x1),
    y1: Math.max(a.y1, b.y1),
  };
}

/** Square dilation by two running passes. */
function dilate(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const across = new Uint8Array(mask.length);
  for (let y = 0; y < height; y++) spread(mask, across, y * width, 1, width, reach);
  const both = new Uint8Array(mask.length);
  for (let x = 0; x < width; x++) spread(across, both, x, width, height, reach);
  return both;
}

function spread(
  from: Uint8Array,
  to: Uint8Array,
  start: number,
  step: number,
  n: number,
  reach: number,
): void {
  let until = -1;
  for (let k = 0; k < Math.min(reach, n); k++) if (from[start + k * step]) until = k + reach;
  for (let k = 0; k < n; k++) {
    const ahead = k + reach;
    if (ahead < n && from[start + ahead * step]) until = ahead + reach;
    if (k <= until) to[start + k * step] = 1;
  }
}
