import { converter } from 'culori';
import { expect, test } from 'vitest';
import { labOf, linearOf, rootOf } from '../../src/copper/lab.ts';
import { labColours, srgbTransfer } from '../references/srgbLab.ts';

test('light of 16 codes, IEC 61966-2-1', () => {
  for (const [code, linear] of srgbTransfer) expect(linearOf[code]).toBeCloseTo(linear, 9);
});

test('L*a*b* of ten colours within 0.002, IEC 61966-2-1 and CIE 15', () => {
  for (const { rgb, lab } of labColours) {
    labOf(...rgb).forEach((v, c) => expect(Math.abs(v - lab[c])).toBeLessThan(0.002));
  }
});

test('the table keeps within 0.1 of an independent library (culori, lab65) over 729 colours', () => {
  const reference = converter('lab65');
  const root = new Float32Array(3);
  for (let n = 0; n < 729; n++) {
    const rgb = [n % 9, Math.floor(n / 9) % 9, Math.floor(n / 81)].map((v) => Math.min(255, 32 * v));
    rootOf(Uint8Array.from(rgb), 0, root);
    const seen = [116 * root[1] - 16, 500 * (root[0] - root[1]), 200 * (root[1] - root[2])];
    const { l, a, b } = reference({ mode: 'rgb', r: rgb[0] / 255, g: rgb[1] / 255, b: rgb[2] / 255 });
    const limit = l < 8 ? 0.25 : 0.1;
    [l, a, b].forEach((v, c) => expect(Math.abs(v - seen[c])).toBeLessThan(limit));
  }
});
