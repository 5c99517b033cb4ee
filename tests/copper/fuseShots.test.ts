import { expect, test } from 'vitest';
import { fuseShots, seeCopper } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { trace } from '../../src/trace/index.ts';
import { drawStrip } from '../trace/creasedStrip.ts';

/** Three strips one below the other, so that there is something to align on; the first has the cut. */
function page(seed: number, paper: 'white' | 'kraft', gapMm: number) {
  const parts = [0, 1, 2].map((n) => drawStrip({ seed: seed + n, paper, gapMm: n ? 0 : gapMm, blurPx: 1.2 }));
  const [{ sheet, gapAt }] = parts;
  const height = 3 * sheet.height;
  const rgb = new Uint8Array(3 * sheet.width * height);
  const truth = new Uint8Array(sheet.width * height);
  parts.forEach((part, n) => {
    rgb.set(part.sheet.rgb, n * part.sheet.rgb.length);
    truth.set(part.truth, n * part.truth.length);
  });
  return {
    sheet: { ...sheet, height, baseMm: { width: sheet.baseMm.width, height: height / 10 }, rgb },
    truth,
    gapAt,
  };
}

/** The sheet moved by whole pixels, with a burnt-out blot over the strip. */
function shot(sheet: SquaredSheet, dx: number, dy: number, blotMm: number): SquaredSheet {
  const { width, height } = sheet;
  const rgb = new Uint8Array(sheet.rgb.length);
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      const [u, v] = [Math.min(width - 1, Math.max(0, i + dx)), Math.min(height - 1, Math.max(0, j + dy))];
      const burnt = Math.hypot(u - 10 * blotMm, v - 60) < 24;
      const from = 3 * (v * width + u);
      rgb.set(burnt ? [255, 255, 255] : sheet.rgb.subarray(from, from + 3), 3 * (j * width + i));
    }
  }
  return { ...sheet, rgb };
}

test('glare at different places goes by two thirds at least, the copper under it comes back', () => {
  const { sheet, truth } = page(21, 'kraft', 0);
  const one = shot(sheet, 0, 0, 8);
  const two = shot(sheet, 6, -4, 22);
  const { sheet: fused, shots } = fuseShots([one, two]);
  expect(shots[1].used).toBe(true);
  expect(shots[1].movedMm).toBeCloseTo(Math.hypot(0.6, 0.4), 0);
  const burnt = ({ rgb }: SquaredSheet): number =>
    truth.reduce((sum, t, k) => sum + (t && rgb[3 * k] + rgb[3 * k + 1] + rgb[3 * k + 2] === 765 ? 1 : 0), 0);
  const glare = burnt(one) - burnt(sheet);
  expect(glare).toBeGreaterThan(600);
  expect(burnt(fused) - burnt(sheet)).toBeLessThan(glare / 3);
  const missed = (mask: Uint8Array): number => truth.reduce((sum, t, k) => sum + (t && !mask[k] ? 1 : 0), 0);
  expect(missed(seeCopper(fused).strict)).toBeLessThan(0.85 * missed(seeCopper(one).strict));
});

test('a true cut stays a cut', () => {
  const { sheet, gapAt } = page(22, 'white', 1);
  const { sheet: fused } = fuseShots([shot(sheet, 0, 0, 3), shot(sheet, 3, 2, 29)]);
  const { filled } = seeCopper(fused);
  const traced = trace(seeCopper(fused), fused);
  const open = filled[Math.floor(gapAt[1] * 10) * sheet.width + Math.floor(gapAt[0] * 10)] === 0;
  const told = traced.crossings.some(
    ({ gap, at }) => gap > 0.5 && Math.hypot(at[0] - gapAt[0], at[1] - gapAt[1]) < 3,
  );
  expect(open || told).toBe(true);
});

/** The sheet seen from elsewhere: its middle lies up to 1.2 mm off, as paper does that is not flat. */
function bent(sheet: SquaredSheet): SquaredSheet {
  const { width, height } = sheet;
  const rgb = new Uint8Array(sheet.rgb.length);
  for (let j = 0; j < height; j++) {
    const off = Math.round(12 * (1 - (2 * (j / height) - 1) ** 2));
    for (let i = 0; i < width; i++) {
      const from = 3 * (Math.max(0, j - off) * width + Math.max(0, i - (off >> 1)));
      rgb.set(sheet.rgb.subarray(from, from + 3), 3 * (j * width + i));
    }
  }
  return { ...sheet, rgb };
}

test('a sheet that is not flat fits over itself as seen from elsewhere, and gives the copper under the glare', () => {
  const { sheet, truth } = page(24, 'kraft', 0);
  const one = shot(sheet, 0, 0, 12);
  const { sheet: fused, shots } = fuseShots([one, bent(sheet)]);
  expect(shots[1].used).toBe(true);
  expect(shots[1].misfitMm).toBeLessThan(0.15);
  expect(shots[1].movedMm).toBeGreaterThan(1);
  const missed = ({ rgb }: SquaredSheet): number =>
    truth.reduce((sum, t, k) => sum + (t && Math.abs(rgb[3 * k] - sheet.rgb[3 * k]) > 60 ? 1 : 0), 0);
  expect(missed(one)).toBeGreaterThan(500);
  expect(missed(fused)).toBeLessThan(missed(one) / 2);
});

test('fingers that only the further shot shows are no copper: a smooth one on the sheet, a lined one over its border', () => {
  const { sheet } = page(25, 'white', 0);
  const { width, height } = sheet;
  const rgb = sheet.rgb.slice();
  const smooth = (i: number, j: number): boolean => Math.hypot(i - 160, j - 120) < 30;
  const lined = (i: number, j: number): boolean => Math.hypot(i - 10, j - 240) < 30;
  for (let k = 0; k < width * height; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const shade = lined(i, j) && j % 12 < 6 ? 0.6 : 1;
    if (smooth(i, j) || lined(i, j)) rgb.set([190 * shade, 120 * shade, 95 * shade], 3 * k);
  }
  const { sheet: fused, shots } = fuseShots([sheet, { ...sheet, rgb }]);
  expect(shots[1].used).toBe(true);
  const changed = sheet.rgb.reduce((sum, v, p) => sum + (fused.rgb[p] === v ? 0 : 1), 0);
  expect(changed).toBeLessThan(0.001 * sheet.rgb.length);
});

test('another sheet is left out, and other sizes are refused in words', () => {
  const one = drawStrip({ seed: 23, paper: 'white', gapMm: 0 }).sheet;
  const other = { ...one, rgb: one.rgb.map((_, k) => (k * 7919) % 251) };
  expect(fuseShots([one, other]).shots[1].used).toBe(false);
  expect(() => fuseShots([one, { ...one, width: 10 }])).toThrow(/one size/);
  expect(() => fuseShots([])).toThrow(/no photograph/);
});
