import { describe, expect, it } from 'vitest';
import { double, halve } from '../../src/copper/learned/halve.ts';
import { meanOdds } from '../../src/copper/learned/meanOdds.ts';
import { closeSquare } from '../../src/copper/closeSquare.ts';
import { openThinGaps } from '../../src/copper/learned/thinGaps.ts';
import { sumOdds } from '../../src/copper/sumOdds.ts';
import { tiles } from '../../src/copper/learned/tiles.ts';
import { scaleTo } from '../../src/engine/scale.ts';
import { cv } from './openCvWasm.ts';

/** A fixed picture of noise, by the generator of Park and Miller (Communications of the ACM 31, 1988). */
function noise(length: number): Uint8Array {
  let state = 20011;
  return Uint8Array.from({ length }, () => (state = (state * 16807) % 2147483647) & 255);
}

describe('tiles', () => {
  it.each([
    [900, 700],
    [1536, 1537],
    [2970, 4200],
  ])('keep every pixel of %i x %i once, by windows the net can take', (width, height) => {
    const kept = new Uint8Array(width * height);
    for (const { x, y, width: w, height: h, keep } of tiles(width, height)) {
      expect([w % 64, h % 64]).toEqual([0, 0]);
      expect(Math.max(w, h)).toBeLessThanOrEqual(1856);
      for (const [from, start, end, length, size] of [
        [keep.x0, x, keep.x1, w, width],
        [keep.y0, y, keep.y1, h, height],
      ]) {
        expect(from === 0 || from - start >= 160).toBe(true);
        expect(end === size || start + length - end >= 160).toBe(true);
      }
      for (let j = keep.y0; j < keep.y1; j++) for (let i = keep.x0; i < keep.x1; i++) kept[j * width + i]++;
    }
    expect(kept.every((n) => n === 1)).toBe(true);
  });
});

describe('closeSquare', () => {
  it('is the closing of OpenCV (opencv-wasm 4.3)', () => {
    const [width, height, reach] = [61, 43, 3];
    const map = noise(width * height).map((v) => (v < 8 ? 1 : 0));
    const source = cv.matFromArray(height, width, cv.CV_8UC1, [...map]);
    const kernel = cv.Mat.ones(2 * reach + 1, 2 * reach + 1, cv.CV_8U);
    const target = new cv.Mat();
    cv.morphologyEx(source, target, cv.MORPH_CLOSE, kernel);
    expect(closeSquare(map, width, height, reach)).toEqual(new Uint8Array(target.data));
  });
});

describe('openThinGaps', () => {
  it('opens a valley 0.5 mm wide and leaves one 3 mm wide and the outside alone', () => {
    const [width, height] = [120, 30];
    const fine = new Uint8Array(width * height).fill(250);
    for (let j = 0; j < height; j++) {
      fine.fill(150, j * width + 40, j * width + 45);
      fine.fill(150, j * width + 70, j * width + 100);
    }
    const seen = fine.map((v) => Math.max(v, 200));
    openThinGaps(seen, fine, width, height, 10);
    const row = [...seen.subarray(15 * width, 16 * width)];
    expect(row.slice(40, 45).every((v) => v < 128)).toBe(true);
    expect(row.filter((v) => v < 128)).toHaveLength(5);
  });
});

describe('meanOdds', () => {
  const say = (v: number, share: number) => ({ chances: Uint8Array.of(v), share });
  const pool = (a: { v: number; share: number }, b: { v: number; share: number }) =>
    meanOdds([say(a.v, a.share), say(b.v, b.share), say(0, 0)])[0] / 255;

  it('is the weighted logarithmic opinion pool (Genest and Zidek, Statistical Science 1, 1986)', () => {
    // Odds 4 to 1 with weight 3/4 against 1 to 4 with weight 1/4: 4^(3/4 - 1/4) = 2 to 1.
    expect(pool({ v: 204, share: 0.6 }, { v: 51, share: 0.2 })).toBeCloseTo(2 / 3, 2);
  });

  it('a sure answer outweighs a doubtful one, and what both say stays', () => {
    expect(pool({ v: 255, share: 1 }, { v: 100, share: 1 })).toBeGreaterThan(0.9);
    expect(pool({ v: 40, share: 1 }, { v: 40, share: 1 })).toBeCloseTo(40 / 255, 2);
  });
});

describe('scaling', () => {
  it('halves by means of 2 x 2 pixels as OpenCV does by areas (opencv-wasm 4.3)', () => {
    const rgb = noise(40 * 26 * 3);
    const source = cv.matFromArray(26, 40, cv.CV_8UC3, [...rgb]);
    const target = new cv.Mat();
    cv.resize(source, target, new cv.Size(20, 13), 0, 0, cv.INTER_AREA);
    const { rgb: half } = halve({ width: 40, height: 26, rgb });
    half.forEach((v, k) => expect(Math.abs(v - target.data[k])).toBeLessThanOrEqual(1));
  });

  it('doubles and enlarges bilinearly as OpenCV does (opencv-wasm 4.3)', () => {
    const map = noise(21 * 17);
    const source = cv.matFromArray(17, 21, cv.CV_8UC1, [...map]);
    const target = new cv.Mat();
    const [from, to] = [
      { width: 21, height: 17 },
      { width: 42, height: 34 },
    ];
    cv.resize(source, target, new cv.Size(42, 34), 0, 0, cv.INTER_LINEAR);
    for (const own of [double(map, from, to), scaleTo(map, 1, from, to)])
      own.forEach((v, k) => expect(Math.abs(v - target.data[k])).toBeLessThanOrEqual(1));
  });
});

describe('sumOdds', () => {
  const at = (chance: number, likelihood: number) =>
    sumOdds(Uint8Array.of(chance), Uint8Array.of(likelihood))[0];

  it('is the logarithmic opinion pool with shares 0.9 and 0.1 (Genest and Zidek, Statistical Science 1, 1986)', () => {
    // Odds 4 to 1 by the nets, e^2 to 1 by the classical eye: 0.9 ln 4 + 0.1 * 2 = ln 4.25.
    expect(at(204, 192) / 255).toBeCloseTo(4.25 / 5.25, 2);
  });

  it('the classical eye decides where the nets are in doubt and cannot turn them where they are sure', () => {
    expect([at(108, 255) > 128, at(148, 0) < 128]).toEqual([true, true]);
    expect([at(250, 0) > 128, at(5, 255) < 128]).toEqual([true, true]);
  });
});
