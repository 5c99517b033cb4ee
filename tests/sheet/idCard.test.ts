import { describe, expect, it } from 'vitest';
import type { Homography, Point, Quad } from '../../src/geometry/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import {
  applyHomography,
  findIdCard,
  homographyFromQuad,
  invertHomography,
  measureBase,
} from '../../src/sheet/index.ts';
import { noise } from '../generate/random.ts';

const width = 1000;
const height = 750;
/** mm on the table to px: a camera tilted by some 15 degrees. */
const toPx: Homography = homographyFromQuad(
  [
    [60, 80],
    [930, 40],
    [960, 720],
    [30, 690],
  ],
  { width: 240, height: 180 },
);

const rectangle = (x: number, y: number, w: number, h: number): Quad =>
  (
    [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ] as Point[]
  ).map((p) => applyHomography(toPx, p)) as unknown as Quad;

// ISO/IEC 7810 ID-1: 85.60 x 53.98 mm, corners rounded by 2.88 to 3.48 mm.
const card = { x: 140, y: 62, w: 85.6, h: 53.98, round: 3.18 };
const base = { x: 16, y: 20, w: 105, h: 148 };

function table(withCard: boolean): Photo {
  const toMm = invertHomography(toPx);
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p += 4) {
      const [u, v] = applyHomography(toMm, [x + 0.5, y + 0.5]);
      const grain = 6 * noise(u, v, 3);
      const colour = colourAt(u, v, withCard);
      for (let c = 0; c < 3; c++) rgba[p + c] = Math.min(255, Math.max(0, colour[c] + grain));
    }
  }
  return { name: 'table', width, height, rgba };
}

function colourAt(u: number, v: number, withCard: boolean): number[] {
  const out = Math.hypot(
    Math.max(0, Math.abs(u - card.x - card.w / 2) - card.w / 2 + card.round),
    Math.max(0, Math.abs(v - card.y - card.h / 2) - card.h / 2 + card.round),
  );
  if (withCard && out < card.round) return [70, 110, 160];
  if (u > base.x && u < base.x + base.w && v > base.y && v < base.y + base.h) {
    const tape = u > base.x + 10 && u < base.x + 16 && v > base.y + 12 && v < base.y + 130;
    return tape ? [90, 60, 50] : [232, 230, 224];
  }
  return [120, 85, 60];
}

describe('findIdCard', () => {
  const basePx = rectangle(base.x, base.y, base.w, base.h);

  it('measures the base by a card lying beside it', () => {
    const found = findIdCard(table(true), basePx);
    const sides = [found!.baseMm.width, found!.baseMm.height].sort((a, b) => a - b);
    expect(Math.abs(sides[0] / base.w - 1)).toBeLessThan(0.01);
    expect(Math.abs(sides[1] / base.h - 1)).toBeLessThan(0.01);
    expect(found!.skew).toBeLessThan(0.02);
  });

  it('finds none where there is none', () => expect(findIdCard(table(false), basePx)).toBeUndefined());

  it('measures exactly from exact corners, and tells when the two are not in one plane', () => {
    const cardPx = rectangle(card.x, card.y, card.w, card.h);
    const { baseMm, skew } = measureBase(cardPx, basePx);
    expect(baseMm.width).toBeCloseTo(base.w, 6);
    expect(baseMm.height).toBeCloseTo(base.h, 6);
    expect(skew).toBeLessThan(1e-9);
    const lifted = cardPx.map(([x, y], i) => (i < 2 ? [x, y - 12] : [x + 9, y])) as unknown as Quad;
    expect(measureBase(lifted, basePx).skew).toBeGreaterThan(0.04);
  });
});
