import type { Card } from '../../card/index.ts';
import { grow } from '../../copper/grow.ts';
import { components } from '../../copper/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import { cellOver } from '../../net/covered.ts';
import { toSegment } from '../../net/distance.ts';
import type { Suggested } from '../../parts/suggest/index.ts';

/** Letters may have been taken for copper: what is thinner than tape, or fits into a square of this side, mm. */
const thinMm = 2.5;
const letterMm = 4;
/** A lamp's body ends within this of its axis, mm: nearer than its light and shadow, so that a name beside it stays. */
const bodyMm = 2.2;
/** The tag is printed in this strip along the lower edge, where no tape lies; on dark paper its letters run into one blot, mm. */
const tagMm = 4.5;
/** The sheet's own edge and a cutting line along it are no letters, mm. */
const rimMm = 0.2;

/** Where no ink is looked for: 1 on copper, lamps, the cell, along the rim and beyond it. Row-major, the mask's size. */
export function notPaper(mask: CopperMask, card: Card, { lamps, cell }: Suggested): Uint8Array {
  const { width, height, pxPerMm, originMm, baseMm } = mask;
  const not = tape(mask);
  const bodies = [...card.lamps, ...lamps];
  const onPart = (x: number, y: number) =>
    bodies.some(({ plus, minus }) => toSegment([x, y], plus, minus) < bodyMm) ||
    cellOver(card, [x, y]) ||
    (cell !== undefined && Math.hypot(x - cell.at[0], y - cell.at[1]) < cell.diameterMm / 2);
  for (let j = 0, k = 0; j < height; j++) {
    const y = originMm[1] + (j + 0.5) / pxPerMm;
    for (let i = 0; i < width; i++, k++) {
      if (not[k]) continue;
      const x = originMm[0] + (i + 0.5) / pxPerMm;
      const inside = Math.min(x, y, baseMm.width - x, baseMm.height - y);
      if (inside < rimMm || onPart(x, y)) not[k] = 1;
    }
  }
  return not;
}

/** The copper without what could be letters. */
function tape(mask: CopperMask): Uint8Array {
  const { width, height, pxPerMm } = mask;
  const broad = opened(mask, (thinMm / 2) * pxPerMm);
  const { labels, count } = components(broad, width, height, 8);
  const boxes = Array.from({ length: count + 1 }, () => [width, height, 0, 0]);
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const box = boxes[labels[k]];
      if (i < box[0]) box[0] = i;
      if (j < box[1]) box[1] = j;
      if (i > box[2]) box[2] = i;
      if (j > box[3]) box[3] = j;
    }
  }
  const large = boxes.map(
    (box, n) => n > 0 && Math.max(box[2] - box[0], box[3] - box[1]) > letterMm * pxPerMm && !isTag(box, mask),
  );
  return Uint8Array.from(labels, (label) => (large[label] ? 1 : 0));
}

/** Whether all of a blot lies where the tag is printed, were the sheet this way up or the other. */
function isTag([, y0, , y1]: number[], { pxPerMm, originMm, baseMm }: CopperMask): boolean {
  const [top, bottom] = [originMm[1] + y0 / pxPerMm, originMm[1] + (y1 + 1) / pxPerMm];
  return top > baseMm.height - tagMm || bottom < tagMm;
}

/** The mask's opening by a disc (Serra 1982): what is thinner than the disc is gone. */
function opened({ filled, width, height }: CopperMask, reach: number): Uint8Array {
  const paper = filled.map((v) => 1 - v);
  const inner = grow(paper, width, height, reach).map((v) => 1 - v);
  return grow(inner, width, height, reach);
}
