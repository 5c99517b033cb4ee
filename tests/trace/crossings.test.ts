import { expect, test } from 'vitest';
import { trace } from '../../src/trace/index.ts';
import { long } from '../long.ts';
import { bridgedMask, drawStrip } from './creasedStrip.ts';
import type { StripScene } from './creasedStrip.ts';
import { maskOf } from './masks.ts';

const drawnMap = [10, 0, 0, 0, 10, 0, 0, 0, 1] as const;

/** Cuts that are told in a picture whose mask bridges them all. */
function cutsIn(scene: StripScene) {
  const drawn = drawStrip(scene);
  const { crossings, smallestGapMm } = trace(bridgedMask(drawn), drawn.sheet);
  const cuts = crossings.filter(({ gap }) => gap > 0.5);
  const [x, y] = drawn.gapAt;
  return { cuts, smallestGapMm, hit: cuts.find(({ at }) => Math.hypot(at[0] - x, at[1] - y) < 3) };
}

const blurs = [0.8, 1.2, 1.6, 2.2];

test('a false cut on at most 3 % of creased sound strips, white and kraft, four blurs', () => {
  let wrong = 0;
  const strips = long ? 200 : 64;
  for (let seed = 0; seed < strips; seed++) {
    const paper = seed % 2 ? 'kraft' : 'white';
    if (cutsIn({ seed: 5000 + seed, paper, gapMm: 0, blurPx: blurs[(seed >> 1) % 4] }).cuts.length) wrong++;
  }
  expect(wrong / strips).toBeLessThanOrEqual(0.03);
}, 300_000);

test.each(['white', 'kraft'] as const)('cuts of 0.5 to 1.5 mm on %s are told and measured', (paper) => {
  for (const gapMm of [0.5, 0.7, 1, 1.5]) {
    const misses: number[] = [];
    for (let seed = 0; seed < 10; seed++) {
      const { hit } = cutsIn({ seed: 300 + seed + 1000 * gapMm, paper, gapMm, blurPx: 1 });
      if (hit) misses.push(Math.abs(hit.widthMm - gapMm));
    }
    expect(misses.length).toBeGreaterThanOrEqual(gapMm < 0.7 ? 7 : 9);
    expect(misses.sort((p, q) => p - q)[misses.length >> 1]).toBeLessThan(0.15);
  }
});

test('the smallest gap that a picture can show grows with its blur, and cuts from there on are told', () => {
  let before = 0;
  for (const blurPx of [0.8, 1.6, 2.4]) {
    const { smallestGapMm } = cutsIn({ seed: 40, paper: 'white', gapMm: 0, blurPx });
    expect(smallestGapMm).toBeGreaterThan(before);
    before = smallestGapMm;
    let told = 0;
    for (let seed = 0; seed < 6; seed++) {
      if (cutsIn({ seed: 60 + seed, paper: 'white', gapMm: 1.25 * smallestGapMm, blurPx }).hit) told++;
    }
    expect(told).toBeGreaterThanOrEqual(5);
  }
});

test('two facing ends with bare paper between them are a gap, with a burnt-out place between them glare', () => {
  const drawn = drawStrip({ seed: 71, paper: 'white', gapMm: 2, blurPx: 1 });
  const mask = { ...bridgedMask(drawn), filled: drawn.truth, strict: drawn.truth };
  const open = trace(mask, drawn.sheet).crossings.filter(({ other }) => other !== undefined);
  expect(open).toHaveLength(1);
  expect(open[0].gap).toBeGreaterThan(0.5);
  expect(open[0].widthMm).toBeCloseTo(2, 0);

  const rgb = drawn.sheet.rgb.slice();
  drawn.truth.forEach((copper, k) => {
    const [i, j] = [k % mask.width, Math.floor(k / mask.width)];
    if (!copper && Math.abs(j - 60) < 25 && Math.abs(i - 10 * drawn.gapAt[0]) < 40)
      rgb.fill(255, 3 * k, 3 * k + 3);
  });
  const burnt = trace(mask, { ...drawn.sheet, rgb }).crossings.filter(({ other }) => other !== undefined);
  expect(burnt).toHaveLength(1);
  expect(burnt[0].glare).toBeGreaterThan(burnt[0].gap);
});

test('a cut close beside a branch is told too, a strip that ends before a rail is no cut', () => {
  const mask = maskOf(40, 30, [
    [5, 5, 18, 10],
    [14, 10, 17, 24],
    [20, 5, 35, 10],
    [26, 13, 29, 24],
  ]);
  const rgb = new Uint8Array(3 * mask.width * mask.height);
  mask.filled.forEach((copper, k) => rgb.set(copper ? [120, 80, 60] : [225, 225, 222], 3 * k));
  const { width, height, pxPerMm, originMm, baseMm } = mask;
  const sheet = { width, height, pxPerMm, originMm, baseMm, rgb, toPhoto: drawnMap, photoPxPerMm: 10 };
  const cuts = trace(mask, sheet).crossings.filter(({ gap }) => gap > 0.5);
  expect(cuts).toHaveLength(1);
  expect(cuts[0].at[0]).toBeCloseTo(19, 0);
  expect(cuts[0].at[1]).toBeCloseTo(7.5, 0);
});
