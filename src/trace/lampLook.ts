import { components, medianRgb, rgbAt, sharesOf, type CopperMask } from '../copper/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { includePixel, noPixels, type PixelBox } from './frame.ts';

/** What is told of a pixel: that a lamp's body lies there, or that bare paper does; 0 tells nothing. */
export const lampSees = { body: 1, paper: 2 } as const;

/** Chances of a lamp, 0..255: from the first on it is one, under the second none. */
const surely = 128;
const hardly = 40;
/** Chance of copper under which a pixel beside it may be paper. */
const hardlyCopper = 60;
/** Smaller is no lamp, mm^2, nor is what is longer than this, mm. */
const leastMm2 = 1;
const longestMm = 25;
/** Paper is told so far round a body, and its colour taken from what is open up to the second, mm. */
const roundMm = [3, 6] as const;
/** Paper keeps so much of its light in each colour; a lamp's grey ends and its deep shade do not. */
const light = { least: 0.75, most: 1.2, mostUneven: 1.15 };
/** Enough paper for its colour, px. */
const leastPaper = 200;

/** Lamps' bodies, and the paper that lies bare about them. */
export function lampLook(mask: CopperMask, sheet: SquaredSheet): Uint8Array | undefined {
  const { lamp, width, height, pxPerMm } = mask;
  if (!lamp) return undefined;
  const seen = lamp.map((chance) => (chance >= surely ? lampSees.body : 0));
  const { labels, count } = components(seen, width, height, 8);
  const boxes = Array.from({ length: count + 1 }, noPixels);
  const areas = new Uint32Array(count + 1);
  for (let k = 0; k < labels.length; k++) {
    if (!labels[k]) continue;
    areas[labels[k]]++;
    includePixel(boxes[labels[k]], k % width, Math.floor(k / width));
  }
  for (let id = 1; id <= count; id++) {
    const { i0, j0, i1, j1 } = boxes[id];
    if (areas[id] < leastMm2 * pxPerMm ** 2 || Math.max(i1 - i0, j1 - j0) > longestMm * pxPerMm) continue;
    tellPaper(boxes[id], mask, lamp, sheet, seen);
  }
  return seen;
}

function tellPaper(
  box: PixelBox,
  mask: CopperMask,
  lamp: Uint8Array,
  sheet: SquaredSheet,
  seen: Uint8Array,
): void {
  const isOpen = (k: number): boolean =>
    !mask.filled[k] && lamp[k] < hardly && mask.likelihood[k] < hardlyCopper;
  const open = placesIn(box, roundMm[1], mask).filter(isOpen);
  if (open.length < leastPaper) return;
  const paper = medianRgb(sheet, open);
  for (const k of placesIn(box, roundMm[0], mask)) {
    if (seen[k] || !isOpen(k)) continue;
    const [least, most] = sharesOf(rgbAt(sheet, k), paper);
    if (least >= light.least && most <= light.most && most <= light.mostUneven * least)
      seen[k] = lampSees.paper;
  }
}

/** The pixels of a box and of so much round it. */
function placesIn(
  { i0, j0, i1, j1 }: PixelBox,
  moreMm: number,
  { width, height, pxPerMm }: CopperMask,
): number[] {
  const more = Math.ceil(moreMm * pxPerMm);
  const places: number[] = [];
  for (let j = Math.max(0, j0 - more); j <= Math.min(height - 1, j1 + more); j++)
    for (let i = Math.max(0, i0 - more); i <= Math.min(width - 1, i1 + more); i++) places.push(j * width + i);
  return places;
}
