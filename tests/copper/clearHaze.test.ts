import { converter } from 'culori';
import { expect, it } from 'vitest';
import { clearHaze } from '../../src/copper/learned/clearHaze.ts';

const encoded = converter('rgb');

/** A sheet of 100 x 100 px in linear light: paper in falling light, a strip of foil, a dark thing; encoded by an independent library (culori). */
function sheet(veil: number, dark = 0.015) {
  const rgb = new Uint8Array(3 * 100 * 100);
  for (let k = 0; k < 10_000; k++) {
    const [i, j] = [k % 100, Math.floor(k / 100)];
    const paper = 0.75 - 0.002 * i;
    const foil = [0.3, 0.14, 0.08];
    const own = j > 40 && j < 55 ? foil : i < 10 && j < 10 ? [dark, dark, dark] : [paper, paper, paper];
    const [r, g, b] = own.map((v) => (v + veil) / (1 + veil));
    const seen = encoded({ mode: 'lrgb', r, g, b });
    rgb.set(
      [seen.r, seen.g, seen.b].map((v) => Math.round(255 * v)),
      3 * k,
    );
  }
  return { width: 100, height: 100, rgb };
}

it('takes a veil of stray light off: foil is as far from paper as without it', () => {
  const contrast = ({ rgb }: { rgb: Uint8Array }) => {
    const [paper, foil] = [3 * 7050, 3 * 4850];
    return [0, 1, 2].map((c) => rgb[paper + c] - rgb[foil + c]);
  };
  const plain = contrast(sheet(0));
  const hazy = contrast(sheet(0.2));
  const cleared = contrast(clearHaze(sheet(0.2)));
  plain.forEach((v, c) => {
    expect(Math.abs(cleared[c] - v)).toBeLessThan(0.05 * v);
    expect(Math.abs(hazy[c] - v)).toBeGreaterThan(0.2 * v);
  });
});

it('leaves a sheet without a veil as it is, and one on which nothing is dark', () => {
  const clear = sheet(0);
  expect(clearHaze(clear)).toBe(clear);
  const blank = { width: 50, height: 50, rgb: Uint8Array.from({ length: 7500 }, (_, k) => 190 + (k % 40)) };
  expect(clearHaze(blank)).toBe(blank);
});

it('does not take what lies outside of the photograph for the dark of the sheet', () => {
  const { width, height, rgb } = sheet(0.2);
  const outside = { width, height, rgb: rgb.slice() };
  outside.rgb.fill(0, 3 * 8000);
  expect(clearHaze(outside).rgb.slice(0, 300)).toEqual(clearHaze({ width, height, rgb }).rgb.slice(0, 300));
});
