import { expect, it } from 'vitest';
import { isStrange } from '../../src/trace/index.ts';
import { openCells } from '../../src/trace/strange.ts';

/** 40 x 20 mm of kraft paper in uneven light; a strip 5 mm high, of which the mask misses x = 15 to 25. 10 px/mm. */
function greened() {
  const [width, height] = [400, 200];
  const rgb = new Uint8Array(3 * width * height);
  const filled = new Uint8Array(width * height);
  for (let k = 0; k < width * height; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const onStrip = j >= 75 && j < 125;
    const light = 0.75 + (0.25 * i) / width;
    const colour = onStrip ? [80, 125, 100] : [176, 122, 64];
    for (let c = 0; c < 3; c++) rgb[3 * k + c] = colour[c] * light;
    if (onStrip && (i < 150 || i >= 250)) filled[k] = 1;
  }
  const frame = { width, height, pxPerMm: 10, originMm: [0, 0] as const, baseMm: { width: 40, height: 20 } };
  const sheet = { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1] as const, photoPxPerMm: 10 };
  const mask = { ...frame, filled, strict: filled, likelihood: filled, readable: 1, troubles: [] };
  return { open: openCells(sheet, { ...mask, by: 'learned' }) };
}

it('greened tape that the mask leaves out does not look like the paper beside it; the paper does', () => {
  const traced = greened();
  expect(isStrange(traced, [20.5, 10.5])).toBe(true);
  expect(isStrange(traced, [20.5, 4.5])).toBe(false);
  expect(isStrange(traced, [35.5, 16.5])).toBe(false);
});

it('copper is not asked, nor what lies beyond the picture, nor where no picture was given', () => {
  const traced = greened();
  expect(isStrange(traced, [5.5, 10.5])).toBe(false);
  expect(isStrange(traced, [90, 10])).toBe(false);
  expect(isStrange({}, [20.5, 10.5])).toBe(false);
});

/** White paper; a strip 5 mm high that is open over a slanting band 1.4 mm wide, in which this colour shows; a wire goes on over the paper. */
function banded(colour: readonly number[], beyond: boolean) {
  const [width, height] = [400, 200];
  const rgb = new Uint8Array(3 * width * height);
  const filled = new Uint8Array(width * height);
  for (let k = 0; k < width * height; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const onStrip = j >= 75 && j < 125;
    const inBand = Math.abs(i - 200 - 0.6 * (j - 100)) < 8;
    const shown = inBand && (onStrip || beyond) ? colour : onStrip ? [150, 90, 60] : [220, 220, 215];
    for (let c = 0; c < 3; c++) rgb[3 * k + c] = shown[c];
    if (onStrip && !inBand) filled[k] = 1;
  }
  const frame = { width, height, pxPerMm: 10, originMm: [0, 0] as const, baseMm: { width: 40, height: 20 } };
  const sheet = { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1] as const, photoPxPerMm: 10 };
  const mask = { ...frame, filled, strict: filled, likelihood: filled, readable: 1, troubles: [] };
  return { open: openCells(sheet, { ...mask, by: 'learned' }) };
}

it('a thin wire over a strip does not look like the paper, a cut as wide does, though copper reaches into its place', () => {
  const along = [8, 8.6, 9.4, 10.6, 11.4, 12].map((y) => [20 + 0.6 * (y - 10), y] as const);
  const strange = (traced: ReturnType<typeof banded>) =>
    along.filter(([x, y]) => isStrange(traced, [x, y])).length;
  expect(strange(banded([180, 30, 40], true))).toBeGreaterThan(3);
  expect(strange(banded([220, 220, 215], false))).toBe(0);
});
